// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import java.io.PrintWriter;
import picocli.CommandLine.Model.CommandSpec;

/** Puts an answer on standard output. */
final class Printed {
    private Printed() {}

    static void print(CommandSpec spec, String text) {
        PrintWriter out = spec.commandLine().getOut();
        out.print(text.endsWith("\n") ? text : text + "\n");
        out.flush();
    }
}
