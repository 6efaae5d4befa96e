// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.desk;

import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import org.earleaf.farm.Farm;
import org.earleaf.units.SideBySide;
import org.earleaf.week.Week;

/** A farm's day on which drivers hold a plan. What is worked out for the fields is that day's, whatever they hold. */
public record HeldDay(FarmDay of, List<Week.Told> told) implements QuestionDay {
    public HeldDay {
        told = List.copyOf(told);
    }

    @Override
    public <T> T get(Question<T> question) {
        return of.get(question);
    }

    @Override
    public <T> CompletableFuture<T> ask(Question<T> question) {
        return of.ask(question);
    }

    @Override
    public Farm farm() {
        return of.farm();
    }

    @Override
    public LocalDate on() {
        return of.on();
    }

    @Override
    public SideBySide how() {
        return of.how();
    }

    @Override
    public Progress progress() {
        return of.progress();
    }
}
