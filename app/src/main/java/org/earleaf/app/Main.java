// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app;

import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import org.earleaf.app.cli.CardsCommand;
import org.earleaf.app.cli.DemoCommand;
import org.earleaf.app.cli.ExportCommand;
import org.earleaf.app.cli.Faults;
import org.earleaf.app.cli.FieldCommand;
import org.earleaf.app.cli.ImportCommand;
import org.earleaf.app.cli.InitCommand;
import org.earleaf.app.cli.LoadCommand;
import org.earleaf.app.cli.MorningCommand;
import org.earleaf.app.cli.OptionsCommand;
import org.earleaf.app.cli.PastCommand;
import org.earleaf.app.cli.PlanCommand;
import org.earleaf.app.cli.ReadCommand;
import org.earleaf.app.cli.RecordCommand;
import org.earleaf.app.cli.RigCommand;
import org.earleaf.app.cli.ServeCommand;
import org.earleaf.app.desk.Wiring;
import org.earleaf.app.words.Words;
import org.earleaf.label.Cautions;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The one entry of the jar: reads the command and hands it to its class. */
@Command(name = "earleaf", version = "earleaf 0.1.0", mixinStandardHelpOptions = true)
public final class Main implements Runnable {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }

    /** The command line with every command, as {@link #main} and the tests run it. */
    public static CommandLine commandLine() {
        return commandLine(Wiring.live());
    }

    /** The same over other days, folders or clocks. */
    public static CommandLine commandLine(Wiring wiring) {
        CommandLine line = new CommandLine(new Main())
                .addSubcommand(new DemoCommand(wiring))
                .addSubcommand(new InitCommand())
                .addSubcommand(new ImportCommand(wiring))
                .addSubcommand(new ServeCommand(wiring))
                .addSubcommand(new MorningCommand(wiring))
                .addSubcommand(new FieldCommand(wiring))
                .addSubcommand(new OptionsCommand(wiring))
                .addSubcommand(new PlanCommand(wiring))
                .addSubcommand(new RigCommand(wiring))
                .addSubcommand(new CardsCommand())
                .addSubcommand(new LoadCommand(wiring))
                .addSubcommand(new ReadCommand(wiring))
                .addSubcommand(new PastCommand(wiring))
                .addSubcommand(new RecordCommand(wiring))
                .addSubcommand(new ExportCommand());
        line.getCommandSpec().usageMessage().footer(Words.here().say(Cautions.LABEL));
        return Faults.guard(line);
    }

    public static void main(String[] args) {
        System.exit(
                commandLine().setOut(utf8(System.out)).setErr(utf8(System.err)).execute(args));
    }

    /** JSON is UTF-8, whatever the terminal's locale says. */
    private static PrintWriter utf8(PrintStream stream) {
        return new PrintWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8), true);
    }
}
