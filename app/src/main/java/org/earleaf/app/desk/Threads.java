// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.desk;

import java.util.concurrent.ForkJoinPool;
import org.earleaf.units.SideBySide;

/**
 * Threads that answers are worked out on.
 *
 * @param answers for fields and the brief
 * @param searches for weeks, so that a search of minutes never stands before a brief of seconds
 */
public record Threads(ForkJoinPool answers, ForkJoinPool searches) {
    /** As many of each as the machine has processors. None is started before it is needed, none keeps a program going. */
    public static Threads ofMachine() {
        int processors = Runtime.getRuntime().availableProcessors();
        return new Threads(new ForkJoinPool(processors), new ForkJoinPool(processors));
    }

    ForkJoinPool of(Question<?> question) {
        return question.isSearch() ? searches : answers;
    }

    /** Pieces of an answer, on the threads for answers. */
    public SideBySide inAnswers() {
        return SideBySide.in(answers);
    }

    SideBySide inSearches() {
        return SideBySide.in(searches);
    }
}
