// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.season;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleSupplier;

/**
 * The kernel as a program of its own, asked line by line like those in the other languages. Each shape is asked in a Java
 * of its own, as each of the C programs is compiled for one shape: a compiler at run time makes other code of a loop that
 * it has seen with one member and with 128.
 */
public final class Ours {
    private static final int WARM_TURNS = 20;
    private static final double WARM_S = 0.4;

    private Ours() {}

    /** @param args what to time: the name of a {@link Shape} */
    public static void main(String[] args) throws IOException {
        DoubleSupplier turn = Shape.valueOf(args[0]).on(Cases.timed(Season.LANES));
        BufferedReader questions = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.US_ASCII));
        for (int k = 0; k < WARM_TURNS; k++) {
            double unused = turn.getAsDouble();
        }
        while (questions.readLine() != null) {
            System.out.printf(Locale.ROOT, "%.3f%n", turn.getAsDouble());
            System.out.flush();
        }
    }

    /** Member-seasons (or member-days) a second of processor time, by what is run. */
    enum Shape {
        ALONE {
            @Override
            DoubleSupplier on(SeasonCase timed) {
                int[] next = {0};
                return () -> Speed.of(() -> timed.alone(next[0]++ % Season.LANES), WARM_S);
            }
        },
        TOGETHER {
            @Override
            DoubleSupplier on(SeasonCase timed) {
                return () -> Season.LANES * Speed.of(timed::together, WARM_S);
            }
        },
        /** As {@link #TOGETHER}, in a Java that runs members alone as well. */
        TOGETHER_AFTER_ALONE {
            @Override
            DoubleSupplier on(SeasonCase timed) {
                DoubleSupplier alone = ALONE.on(timed);
                DoubleSupplier together = TOGETHER.on(timed);
                return () -> {
                    double unused = alone.getAsDouble();
                    return together.getAsDouble();
                };
            }
        },
        ONE_DAY {
            @Override
            DoubleSupplier on(SeasonCase timed) {
                Advance advance = new Advance(timed);
                return () -> Season.LANES * Speed.of(advance::once, WARM_S);
            }
        };

        abstract DoubleSupplier on(SeasonCase timed);
    }

    /** Starts one, with this Java and its options. */
    static Peer start(Shape shape) {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(ManagementFactory.getRuntimeMXBean().getInputArguments());
        command.addAll(List.of("-cp", System.getProperty("java.class.path"), Ours.class.getName(), shape.name()));
        return new Peer(command);
    }
}
