// SPDX-License-Identifier: Apache-2.0
package org.earleaf;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The Javadoc comments of one Java source text, in their order, each with the name of what it stands above. */
final class JavadocBlocks {
    private static final Pattern COMMENT = Pattern.compile("/\\*\\*(.*?)\\*/", Pattern.DOTALL);
    private static final Pattern ANNOTATION = Pattern.compile("@\\w+(\\([^)]*\\))?");
    private static final Pattern TYPE = Pattern.compile("\\b(?:class|record|interface|enum)\\s+(\\w+)");
    private static final Pattern LAST_NAME = Pattern.compile("(\\w+)\\s*$");
    private static final Pattern TEST_NAME = Pattern.compile("\\b[A-Z]\\w*Test\\b");

    /** Above what it stands ("Soil" or "Soil.drain"), and its lines without stars and tags. */
    record Block(String title, List<String> lines) {
        boolean has(String keyword) {
            return lines.stream().anyMatch(line -> isKeyword(line, keyword));
        }

        /** The test classes that the Check lines, and what follows them, name. */
        List<String> testsNamed() {
            List<String> names = new ArrayList<>();
            boolean within = false;
            for (String line : lines) {
                within = isKeyword(line, "Check") || (within && line.startsWith(" "));
                if (within) {
                    Matcher name = TEST_NAME.matcher(line);
                    while (name.find()) {
                        names.add(name.group());
                    }
                }
            }
            return names;
        }

        private static boolean isKeyword(String line, String keyword) {
            return line.startsWith(keyword + " ") || line.startsWith(keyword + ":");
        }
    }

    private JavadocBlocks() {}

    /** All blocks of a source whose file is named after {@code fileType}. */
    static List<Block> of(String fileType, String source) {
        List<Block> blocks = new ArrayList<>();
        Matcher comment = COMMENT.matcher(source);
        while (comment.find()) {
            blocks.add(new Block(title(fileType, source.substring(comment.end())), lines(comment.group(1))));
        }
        return blocks;
    }

    private static String title(String fileType, String after) {
        String code = ANNOTATION.matcher(after).replaceAll("");
        String declaration = code.split("[({;=,]", 2)[0];
        Matcher type = TYPE.matcher(declaration);
        if (type.find()) {
            return type.group(1).equals(fileType) ? fileType : fileType + "." + type.group(1);
        }
        Matcher name = LAST_NAME.matcher(declaration);
        return name.find() ? fileType + "." + name.group(1) : fileType;
    }

    private static List<String> lines(String comment) {
        List<String> lines = new ArrayList<>();
        for (String raw : comment.split("\n", -1)) {
            String line = raw.strip();
            line = line.startsWith("*") ? line.substring(1) : line;
            line = line.startsWith(" ") ? line.substring(1) : line;
            line = line.stripTrailing();
            if (line.startsWith("@")) {
                break; // parameters and the like are for the reader of the code
            }
            if (!line.equals("<pre>") && !line.equals("</pre>")) {
                lines.add(line);
            }
        }
        while (!lines.isEmpty() && lines.get(0).isEmpty()) {
            lines.remove(0);
        }
        while (!lines.isEmpty() && lines.get(lines.size() - 1).isEmpty()) {
            lines.remove(lines.size() - 1);
        }
        return List.copyOf(lines);
    }
}
