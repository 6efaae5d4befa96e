// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import static org.earleaf.app.words.Words.tell;

import java.util.concurrent.Callable;
import org.earleaf.app.desk.Wiring;
import org.earleaf.app.web.Serving;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code earleaf serve}: the pages, until interrupted. */
@Command(name = "serve", mixinStandardHelpOptions = true)
public final class ServeCommand implements Callable<Integer> {
    private final Wiring wiring;

    @Mixin
    private final Common common = new Common();

    @Option(names = "--port", paramLabel = "N", descriptionKey = "cli.serve.option.port")
    private int port = 8080;

    @Option(names = "--listen", paramLabel = "ADDRESS", descriptionKey = "cli.serve.option.listen")
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
            Printed.print(spec, tell("cli.serve.stop-it-with-ctrl-c", "start", serving.start(listen, port)));
            serving.untilInterrupted();
        }
        return Faults.DONE;
    }
}
