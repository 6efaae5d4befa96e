// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.words;

import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreeScanner;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.ToolProvider;

/**
 * What the main sources hand to the catalogue, found by reading them: calls with a code, and every text in quotes.
 *
 * @param calls each code with the names of its values, empty when they cannot be seen from the source
 * @param quoted every string literal, and every key in a template
 */
record Spoken(List<Call> calls, Set<String> quoted) {
    private static final Pattern CODE = Pattern.compile("[a-z0-9]+([.-][a-z0-9]+)*");
    private static final Pattern IN_TEMPLATE =
            Pattern.compile("#\\{([\\w.-]+)}|\\b(?:say|html|markup|text)\\('([a-z0-9.-]+)'((?:,[^)]*)?)\\)");
    private static final int NAMES_OF_PROBLEM = 3;
    private static final Set<String> PROBLEMS = Set.of(
            "Problem.of",
            "EarleafException.coded",
            "Gathered.problem",
            "gathered.wrong",
            "findings.problem",
            "row.refuse",
            "parts.refuse",
            "line.row().refuse",
            "head.row().refuse",
            "problem",
            "refused",
            "refuseOnce",
            "trouble",
            "Photograph.refused");

    record Call(String file, String code, boolean isProblem, Optional<Set<String>> names) {}

    static Spoken in(Path house) {
        List<Call> calls = new ArrayList<>();
        Set<String> quoted = new LinkedHashSet<>();
        List<Path> sources = List.of("core", "exchange", "app").stream()
                .flatMap(room -> files(house.resolve(room + "/src/main/java"), ".java").stream())
                .toList();
        read(sources, calls, quoted);
        files(house.resolve("app/src/main/resources"), "html").forEach(file -> template(file, calls, quoted));
        return new Spoken(calls, quoted);
    }

    private static List<Path> files(Path folder, String end) {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(f -> f.toString().endsWith(end)).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void template(Path file, List<Call> calls, Set<String> quoted) {
        try {
            Matcher m = IN_TEMPLATE.matcher(Files.readString(file));
            while (m.find()) {
                String key = m.group(1) != null ? m.group(1) : m.group(2);
                quoted.add(key);
                Optional<Set<String>> names = m.group(1) != null ? Optional.of(Set.of()) : Optional.empty();
                calls.add(new Call(file.getFileName().toString(), key, false, names));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void read(List<Path> sources, List<Call> calls, Set<String> quoted) {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        try (var manager = compiler.getStandardFileManager(null, null, null)) {
            JavacTask task = (JavacTask) compiler.getTask(
                    null, manager, d -> {}, List.of("-proc:none"), null, manager.getJavaFileObjectsFromPaths(sources));
            for (var unit : task.parse()) {
                String file =
                        Path.of(unit.getSourceFile().getName()).getFileName().toString();
                new Reader(file, calls, quoted).scan(unit, null);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static final class Reader extends TreeScanner<Void, Void> {
        private final String file;
        private final List<Call> calls;
        private final Set<String> quoted;

        Reader(String file, List<Call> calls, Set<String> quoted) {
            this.file = file;
            this.calls = calls;
            this.quoted = quoted;
        }

        @Override
        public Void visitLiteral(LiteralTree literal, Void nothing) {
            if (literal.getValue() instanceof String text) {
                quoted.add(text);
            }
            return super.visitLiteral(literal, nothing);
        }

        @Override
        public Void visitMethodInvocation(MethodInvocationTree call, Void nothing) {
            String method = call.getMethodSelect().toString();
            boolean problem = PROBLEMS.contains(method)
                    && !call.getArguments().isEmpty()
                    // A problem that is made elsewhere and handed on.
                    && !(call.getArguments().get(0) instanceof MethodInvocationTree);
            boolean spoken = method.equals("tell") || method.equals("Said.of") || isWords(call.getMethodSelect());
            if ((problem || spoken) && !call.getArguments().isEmpty()) {
                Optional<Set<String>> names = names(call.getArguments(), problem ? NAMES_OF_PROBLEM : 1);
                literals(call.getArguments().get(0)).stream()
                        .filter(code -> CODE.matcher(code).matches())
                        .forEach(code -> calls.add(new Call(file, code, problem, names)));
            }
            return super.visitMethodInvocation(call, nothing);
        }

        /** {@code words.say}, {@code w.html}, {@code Words.in(metric).say}. */
        private static boolean isWords(ExpressionTree method) {
            if (!(method instanceof MemberSelectTree member)) {
                return false;
            }
            String name = member.getIdentifier().toString();
            String of = member.getExpression().toString();
            return (name.equals("say") || name.equals("tell") || name.equals("html") || name.equals("markup"))
                    && (of.matches("(?i).*\\bwords(\\(\\))?") || of.equals("w") || of.startsWith("Words."));
        }

        private static Optional<Set<String>> names(List<? extends ExpressionTree> arguments, int from) {
            if (arguments.size() == from + 1) {
                return Optional.empty(); // handed on in one piece
            }
            Set<String> names = new LinkedHashSet<>();
            for (int k = from; k < arguments.size(); k += 2) {
                if (!(arguments.get(k) instanceof LiteralTree literal && literal.getValue() instanceof String name)) {
                    return Optional.empty();
                }
                names.add(name);
            }
            return Optional.of(names);
        }

        private static List<String> literals(Tree expression) {
            List<String> found = new ArrayList<>();
            new TreeScanner<Void, Void>() {
                @Override
                public Void visitLiteral(LiteralTree literal, Void nothing) {
                    if (literal.getValue() instanceof String text) {
                        found.add(text);
                    }
                    return null;
                }

                /** A text that is made inside is read by itself. */
                @Override
                public Void visitMethodInvocation(MethodInvocationTree inside, Void nothing) {
                    return null;
                }
            }.scan(expression, null);
            return found;
        }
    }
}
