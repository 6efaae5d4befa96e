/**
 * Web: the pages. Each page class asks one question of a {@link org.earleaf.app.FarmDay}, turns the answer into words
 * and drawings, and hands them to the template of the same name.
 *
 * <p>In: {@link org.earleaf.app.web.Days} (the farm on a day), {@link org.earleaf.app.web.Notebook} (what is written
 * down). Out: HTML that works without script. Never: agronomy; every figure comes from core.
 */
package org.earleaf.app.web;
