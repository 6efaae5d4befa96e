// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import static org.earleaf.app.words.Words.tell;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.earleaf.app.words.CommandTexts;
import org.earleaf.app.words.Words;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/** Exit statuses of all commands: 0 done, 2 the input is wrong, 1 an unexpected fault (with a report file). */
public final class Faults {
    public static final int DONE = 0;
    public static final int FAULT = 1;
    public static final int WRONG_INPUT = 2;

    private Faults() {}

    /** Gives a command line and its subcommands these statuses and messages. */
    public static CommandLine guard(CommandLine line) {
        name(line);
        return line.setResourceBundle(new CommandTexts())
                .setExecutionStrategy(Faults::run)
                .setParameterExceptionHandler((e, args) -> wrongArguments(e, List.of(args)))
                .setExecutionExceptionHandler(Faults::report);
    }

    /** What stands for a command in the first line of a help has no key of its own. */
    private static void name(CommandLine line) {
        line.getCommandSpec().usageMessage().synopsisSubcommandLabel(tell("cli.usage.command"));
        line.getSubcommands().values().forEach(Faults::name);
    }

    /** The last command given, in the units it asks for. */
    private static int run(ParseResult parsed) {
        Words.begin(last(parsed).matchedOptionValue("--units", Common.UnitSystem.US) == Common.UnitSystem.METRIC);
        return new CommandLine.RunLast().execute(parsed);
    }

    private static ParseResult last(ParseResult parsed) {
        return parsed.hasSubcommand() ? last(parsed.subcommand()) : parsed;
    }

    private static int wrongArguments(ParameterException e, List<String> args) {
        PrintWriter err = e.getCommandLine().getErr();
        if (e.getCause() instanceof EarleafException wrong) {
            return wrongInput(wrong, args, e.getCommandLine());
        }
        err.println(e.getMessage());
        CommandLine.UnmatchedArgumentException.printSuggestions(e, err);
        err.println(tell(
                "cli.faults.see-help",
                "qualifiedName",
                e.getCommandLine().getCommandSpec().qualifiedName()));
        return WRONG_INPUT;
    }

    private static int report(Exception e, CommandLine line, ParseResult parsed) {
        if (e instanceof EarleafException wrong) {
            return wrongInput(
                    wrong, parsed.originalArgs(), last(parsed).commandSpec().commandLine());
        }
        line.getErr().println(tell("cli.faults.an-unexpected-fault-stopped", "fault", String.valueOf(e)));
        try {
            Path file = Files.createTempFile("earleaf-report-", ".txt");
            Files.writeString(file, story(e, parsed.originalArgs()));
            line.getErr().println(tell("cli.faults.a-report-is-in", "file", String.valueOf(file)));
        } catch (IOException noFile) {
            line.getErr()
                    .println(tell(
                            "cli.faults.no-report-could-be-written", "message", String.valueOf(noFile.getMessage())));
            line.getErr().println(story(e, parsed.originalArgs()));
        }
        return FAULT;
    }

    private static int wrongInput(EarleafException wrong, List<String> args, CommandLine line) {
        PrintWriter err = line.getErr();
        if (args.contains("--json")) {
            err.println(json(wrong));
            return WRONG_INPUT;
        }
        for (Problem problem : wrong.problems()) {
            err.println(Words.here().told(typed(problem, line)).sentence());
        }
        return WRONG_INPUT;
    }

    /** A part of what was told is shown as the option that it was typed after; a unit is typed with its number. */
    private static Problem typed(Problem problem, CommandLine line) {
        String part = problem.where().equals("unit") ? "value" : problem.where().replaceFirst("_unit$", "");
        String option = "--" + part.replace('_', '-');
        return line.getCommandSpec().findOption(option) == null ? problem : problem.at(Said.text(option));
    }

    /** The problems for a program: each with the code of its rule. */
    private static String json(EarleafException wrong) {
        return Json.text(Json.object(
                "problems",
                wrong.problems().stream()
                        .map(Words.US::told)
                        .map(p -> Json.object(
                                "code", p.code(),
                                "what", p.what(),
                                "where", p.where(),
                                "found", p.found(),
                                "expected", p.expected(),
                                "todo", p.todo()))
                        .toList()));
    }

    private static String story(Exception e, List<String> args) {
        StringWriter text = new StringWriter();
        PrintWriter out = new PrintWriter(text);
        out.println(tell("cli.faults.earleaf", "args", String.join(" ", args)));
        out.println(tell(
                "cli.faults.java-on",
                "property",
                System.getProperty("java.version"),
                "property2",
                System.getProperty("os.name")));
        e.printStackTrace(out);
        out.flush();
        return text.toString();
    }
}
