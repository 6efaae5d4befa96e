// SPDX-License-Identifier: Apache-2.0
/**
 * The commands. A command reads its arguments, asks one question of {@link org.earleaf.app.desk.FarmDay}, of core or of
 * the store, and prints the answer; it computes nothing. Rules on what was typed stand in {@link org.earleaf.entry}.
 *
 * <p>Start at {@link org.earleaf.app.cli.Common} (the options every command takes), {@link org.earleaf.app.cli.Say} (what
 * is read by people), {@link org.earleaf.app.cli.Json} (the one way to print JSON) and
 * {@link org.earleaf.app.cli.Faults} (exit statuses and messages).
 */
@NullMarked
package org.earleaf.app.cli;

import org.jspecify.annotations.NullMarked;
