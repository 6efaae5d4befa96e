// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import static org.earleaf.app.words.Words.tell;

import java.nio.file.Files;
import java.util.concurrent.Callable;
import org.earleaf.app.store.FarmStore;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code earleaf init}: makes an empty database. */
@Command(name = "init", mixinStandardHelpOptions = true)
public final class InitCommand implements Callable<Integer> {
    @Mixin
    private final Common common = new Common();

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() {
        FarmSource.refuseFolder(common, "init");
        if (Files.exists(common.farm())) {
            throw new EarleafException(Problem.of(
                    "init.a-new-name", Said.text(common.farm().toString()), Said.of("found.a-file-that-is-there")));
        }
        FarmStore.create(common.farm()).close();
        Printed.print(
                spec,
                common.isJson()
                        ? Json.text(Json.object("farm", common.farm().toString()))
                        : tell(
                                "cli.init.made-next-earleaf-import",
                                "farm",
                                String.valueOf(common.farm()),
                                "farm2",
                                String.valueOf(common.farm())));
        return Faults.DONE;
    }
}
