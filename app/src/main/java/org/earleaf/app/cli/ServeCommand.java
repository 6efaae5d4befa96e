// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import java.util.concurrent.Callable;
import org.earleaf.app.desk.Wiring;
import org.earleaf.app.web.Serving;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code earleaf serve}: the pages, until interrupted. */
@Command(name = "serve", mixinStandardHelpOptions = true, description = "Serves the pages until interrupted.")
public final class ServeCommand implements Callable<Integer> {
    private final Wiring wiring;

    @Mixin
    private final Common common = new Common();

    @Option(names = "--port", paramLabel = "N", description = "Port (default: 8080; 0 takes a free one).")
    private int port = 8080;

    @Option(
            names = "--listen",
            paramLabel = "ADDRESS",
            description =
                    "Address to listen on (default: 127.0.0.1, this machine alone). Anyone who reaches it can read"
                            + " and write: only in a network you trust.")
    private String listen = "127.0.0.1";

    @Spec
    private CommandSpec spec = CommandSpec.create();

    public ServeCommand(Wiring wiring) {
        this.wiring = wiring;
    }

    @Override
    public Integer call() {
        try (Serving serving = common.findFolder().isPresent()
                ? Serving.onTrial(wiring, common.findFolder().get(), common.findOn())
                : Serving.of(wiring, common.farm(), common.findOn())) {
            Printed.print(spec, serving.start(listen, port) + "\nStop it with Ctrl-C.");
            serving.untilInterrupted();
        }
        return Faults.DONE;
    }
}
