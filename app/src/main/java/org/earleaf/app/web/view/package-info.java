/**
 * Views: answers of core put into words, figures and drawings for one page each; the only place where pages format.
 *
 * <p>In: core's records. Out: records of text and safe markup for templates. Not here: requests, forms, the store.
 */
package org.earleaf.app.web.view;
