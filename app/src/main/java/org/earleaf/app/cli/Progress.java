// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import java.io.PrintWriter;
import java.util.Timer;
import java.util.TimerTask;
import picocli.CommandLine.Model.CommandSpec;

/** Tells on standard error that work goes on, once it takes longer than a person waits without wondering. */
final class Progress implements AutoCloseable {
    private static final int QUIET_MS = 3000;
    private static final int BETWEEN_MS = 2000;

    private final PrintWriter err;
    private final Timer timer = new Timer("earleaf-progress", true);
    private boolean told;

    private Progress(CommandSpec spec, String what) {
        this.err = spec.commandLine().getErr();
        timer.schedule(
                new TimerTask() {
                    @Override
                    public void run() {
                        tell(what);
                    }
                },
                QUIET_MS,
                BETWEEN_MS);
    }

    static Progress of(CommandSpec spec, String what) {
        return new Progress(spec, what);
    }

    private synchronized void tell(String what) {
        err.print(told ? "." : what + " .");
        err.flush();
        told = true;
    }

    @Override
    public synchronized void close() {
        timer.cancel();
        if (told) {
            err.println();
            told = false;
        }
    }
}
