/**
 * The commands. A command reads its arguments, asks core one question and prints the answer; it computes nothing.
 *
 * <p>Start at {@link org.earleaf.app.cli.Common} (the options every command takes), {@link org.earleaf.app.cli.Json}
 * (the one way to print JSON) and {@link org.earleaf.app.cli.Faults} (exit statuses and messages).
 */
@NullMarked
package org.earleaf.app.cli;

import org.jspecify.annotations.NullMarked;
