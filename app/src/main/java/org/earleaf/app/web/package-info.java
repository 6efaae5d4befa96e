// SPDX-License-Identifier: Apache-2.0
/**
 * Web: the pages. A page class asks {@link org.earleaf.app.desk.FarmDay} and {@link org.earleaf.app.desk.Notebook}, has a
 * view made of the answers, and hands it to a template; what comes back from a form goes to the rules of
 * {@link org.earleaf.entry} and is written down.
 *
 * <pre>
 * In         requests; Days (the farm on a day) and Notebook (what is written down and filed)
 * Out        pages that work without script, sheets as PDF, dates for a calendar
 * Start at   WebServer; MorningPage, the plainest page; Desk, what every page stands on
 * Not here   agronomy: core; rules on what people enter: entry; what a page says and draws: view, drawing
 * </pre>
 */
package org.earleaf.app.web;
