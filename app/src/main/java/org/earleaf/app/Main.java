// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app;

import org.earleaf.Cautions;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The one entry of the jar: reads the command and hands it to its class. */
@Command(
        name = "earleaf",
        version = "earleaf 0.1.0",
        mixinStandardHelpOptions = true,
        description = "Where the nitrogen of each corn field lies, and what the next pass is worth.",
        footer = Cautions.LABEL)
public final class Main implements Runnable {

    @Override
    public void run() {
        CommandLine.usage(this, System.out);
    }

    public static void main(String[] args) {
        System.exit(new CommandLine(new Main()).execute(args));
    }
}
