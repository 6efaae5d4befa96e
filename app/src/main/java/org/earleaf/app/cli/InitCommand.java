// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import java.nio.file.Files;
import java.util.concurrent.Callable;
import org.earleaf.app.store.FarmStore;
import org.earleaf.units.EarleafException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** {@code earleaf init}: makes an empty database. */
@Command(name = "init", mixinStandardHelpOptions = true, description = "Makes an empty farm database.")
public final class InitCommand implements Callable<Integer> {
    @Mixin
    private final Common common = new Common();

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() {
        FarmSource.refuseFolder(common, "init");
        if (Files.exists(common.farm())) {
            throw EarleafException.of(
                    common.farm().toString(),
                    "a file that is there already",
                    "a new name",
                    "Name another file with --farm, or use the one that is there.");
        }
        FarmStore.create(common.farm()).close();
        Printed.print(
                spec,
                common.isJson()
                        ? Json.text(Json.object("farm", common.farm().toString()))
                        : "Made " + common.farm() + ". Next: earleaf import --folder DIR --farm " + common.farm());
        return Faults.DONE;
    }
}
