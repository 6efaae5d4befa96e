// SPDX-License-Identifier: Apache-2.0
package org.earleaf;

import com.sun.source.tree.AnnotationTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.LineMap;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.NewClassTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.TreeScanner;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javax.lang.model.element.Modifier;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** What stands in source files, read by the compiler's own reader. */
final class Sources {
    /**
     * A method, or a constructor, of which the list of parts of a record is one.
     *
     * @param name its class, with those around it, and for a method its own: "Farm.Work", "Farm.pass"
     * @param lines from its first line to its last, without what stands before it
     */
    record Code(String name, boolean constructor, int parameters, long lines) {}

    /** Words between quotes, without those of annotations and of exceptions that only a programmer sees. */
    record Words(Path file, String text) {}

    /** A file's type with nothing around it. */
    record Unit(Path file, String inPackage) {}

    private final List<Code> code = new ArrayList<>();
    private final List<Words> words = new ArrayList<>();
    private final List<Unit> units = new ArrayList<>();

    List<Code> code() {
        return code;
    }

    List<Words> words() {
        return words;
    }

    List<Unit> units() {
        return units;
    }

    /** The folder that holds all rooms. */
    static Path house() {
        Path folder = Path.of("").toAbsolutePath();
        while (!Files.exists(folder.resolve("earleaf"))) {
            folder = folder.getParent();
        }
        return folder;
    }

    /** Every source file under a folder, without what a build wrote there. */
    static Stream<Path> files(Path folder) {
        if (!Files.isDirectory(folder)) {
            return Stream.empty();
        }
        try (Stream<Path> files = Files.walk(folder)) {
            return files
                    .filter(file -> file.toString().endsWith(".java"))
                    .filter(file -> !folder.relativize(file).toString().contains("target/"))
                    .sorted()
                    .toList()
                    .stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Sources of(List<Path> files) {
        Sources all = new Sources();
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        try (StandardJavaFileManager manager = compiler.getStandardFileManager(null, Locale.ROOT, null)) {
            JavacTask task = (JavacTask) compiler.getTask(
                    null, manager, null, List.of("-proc:none"), null, manager.getJavaFileObjectsFromPaths(files));
            SourcePositions positions = Trees.instance(task).getSourcePositions();
            for (CompilationUnitTree unit : task.parse()) {
                Path file = Path.of(unit.getSourceFile().toUri());
                all.units.add(new Unit(file, String.valueOf(unit.getPackageName())));
                unit.accept(all.new Reader(unit, positions, file), null);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return all;
    }

    private final class Reader extends TreeScanner<Void, Void> {
        private final CompilationUnitTree unit;
        private final SourcePositions positions;
        private final Path file;
        private final Deque<String> inside = new ArrayDeque<>();

        Reader(CompilationUnitTree unit, SourcePositions positions, Path file) {
            this.unit = unit;
            this.positions = positions;
            this.file = file;
        }

        @Override
        public Void visitClass(ClassTree type, Void none) {
            String name = type.getSimpleName().toString();
            inside.addLast(name.isEmpty() ? "new" : name);
            if (type.getKind() == Tree.Kind.RECORD) {
                int parts =
                        (int) type.getMembers().stream().filter(Sources::isPart).count();
                code.add(new Code(String.join(".", inside), true, parts, 0));
            }
            super.visitClass(type, null);
            inside.removeLast();
            return null;
        }

        @Override
        public Void visitMethod(MethodTree method, Void none) {
            boolean constructor = method.getReturnType() == null;
            LineMap lines = unit.getLineMap();
            Tree first = constructor ? method.getBody() : method.getReturnType();
            long from = lines.getLineNumber(positions.getStartPosition(unit, first));
            long to = lines.getLineNumber(positions.getEndPosition(unit, method));
            String owner = String.join(".", inside);
            String name = constructor ? owner : owner + "." + method.getName();
            code.add(new Code(name, constructor, method.getParameters().size(), to - from + 1));
            return super.visitMethod(method, null);
        }

        @Override
        public Void visitAnnotation(AnnotationTree annotation, Void none) {
            return null;
        }

        /** What only a programmer can cause and only a programmer reads. */
        @Override
        public Void visitNewClass(NewClassTree made, Void none) {
            String type = made.getIdentifier().toString();
            boolean fault = type.equals("IllegalStateException")
                    || type.equals("IllegalArgumentException")
                    || type.equals("UnsupportedOperationException")
                    || type.equals("AssertionError");
            return fault ? null : super.visitNewClass(made, null);
        }

        @Override
        public Void visitLiteral(LiteralTree literal, Void none) {
            if (literal.getValue() instanceof String text) {
                words.add(new Words(file, text));
            }
            return null;
        }
    }

    private static boolean isPart(Tree member) {
        return member instanceof VariableTree field
                && !field.getModifiers().getFlags().contains(Modifier.STATIC);
    }
}
