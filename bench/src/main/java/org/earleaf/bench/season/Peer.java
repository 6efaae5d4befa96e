// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.season;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;

/** A contender in a process of its own: a program that is asked line by line. */
final class Peer implements AutoCloseable {
    private final Process process;
    private final BufferedReader answers;

    /** @param command the program with the case it reads */
    Peer(List<String> command) {
        try {
            process = new ProcessBuilder(command)
                    .redirectError(ProcessBuilder.Redirect.INHERIT)
                    .start();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        answers = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.US_ASCII));
    }

    private void ask(String question) {
        try {
            process.getOutputStream().write((question + "\n").getBytes(StandardCharsets.US_ASCII));
            process.getOutputStream().flush();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private double[] answer() {
        try {
            String line = answers.readLine();
            if (line == null) {
                throw new IOException("the other program stopped without an answer");
            }
            return Arrays.stream(line.trim().split(" "))
                    .mapToDouble(Double::parseDouble)
                    .toArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Its results by member. */
    double[][] results(int members) {
        ask("check");
        double[][] all = new double[members][];
        Arrays.setAll(all, m -> answer());
        return all;
    }

    /** Member-seasons a second of processor time, over so long. */
    double speed(double seconds) {
        ask("turn " + seconds);
        return answer()[0];
    }

    long pid() {
        return process.pid();
    }

    @Override
    public void close() {
        process.destroy();
    }
}
