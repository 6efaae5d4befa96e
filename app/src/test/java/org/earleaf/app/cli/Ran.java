// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import picocli.CommandLine;

/** A command run in this process: its exit status and what it printed. */
record Ran(int exit, String out, String err) {
    static Ran of(CommandLine line, String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int exit = line.setOut(new PrintWriter(out, true))
                .setErr(new PrintWriter(err, true))
                .execute(args);
        return new Ran(exit, out.toString(), err.toString());
    }
}
