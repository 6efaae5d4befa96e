/**
 * Text: how words, numbers and dates are written on pages, and text that is already safe HTML.
 *
 * <p>{@link org.earleaf.app.web.text.Format} is the one place where pages leave SI.
 */
package org.earleaf.app.web.text;
