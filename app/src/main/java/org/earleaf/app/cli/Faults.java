// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.earleaf.app.words.Words;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
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
        return line.setParameterExceptionHandler((e, args) -> wrongArguments(e))
                .setExecutionExceptionHandler(Faults::report);
    }

    private static int wrongArguments(ParameterException e) {
        PrintWriter err = e.getCommandLine().getErr();
        err.println(e.getMessage());
        CommandLine.UnmatchedArgumentException.printSuggestions(e, err);
        err.println("See: " + e.getCommandLine().getCommandSpec().qualifiedName() + " --help");
        return WRONG_INPUT;
    }

    private static int report(Exception e, CommandLine line, ParseResult parsed) {
        if (e instanceof EarleafException wrong) {
            if (parsed.originalArgs().contains("--json")) {
                line.getErr().println(json(wrong));
                return WRONG_INPUT;
            }
            for (Problem problem : wrong.problems()) {
                line.getErr().println(Words.US.told(problem).sentence());
            }
            return WRONG_INPUT;
        }
        line.getErr().println("An unexpected fault stopped the work: " + e);
        try {
            Path file = Files.createTempFile("earleaf-report-", ".txt");
            Files.writeString(file, story(e, parsed.originalArgs()));
            line.getErr().println("A report is in " + file);
        } catch (IOException noFile) {
            line.getErr().println("No report could be written (" + noFile.getMessage() + "); here it is:");
            line.getErr().println(story(e, parsed.originalArgs()));
        }
        return FAULT;
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
        out.println("earleaf " + String.join(" ", args));
        out.println("Java " + System.getProperty("java.version") + " on " + System.getProperty("os.name"));
        e.printStackTrace(out);
        out.flush();
        return text.toString();
    }
}
