// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.desk;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import org.earleaf.brief.Brief;
import org.earleaf.decide.NitrogenOptions;
import org.earleaf.decide.Option;
import org.earleaf.decide.ProtectionAnswer;
import org.earleaf.farm.Farm;
import org.earleaf.field.Zone;
import org.earleaf.outlook.Outlook;
import org.earleaf.units.SideBySide;
import org.earleaf.week.Week;

/** The questions that doors (commands and pages) may ask about a farm on a day; the answers come from core. */
public interface FarmDay {
    /** The farm asked about. */
    Farm farm();

    /** The day asked about. */
    LocalDate on();

    /** The plan that drivers hold: the week and the brief go by it as far as it still holds. Empty: none. */
    default List<Week.Told> told() {
        return List.of();
    }

    /** What to do today and in the next days, over the whole farm. */
    Brief brief();

    /** Where a zone stands, what lies ahead of it and what can be done. */
    NitrogenOptions.Answer answer(Zone zone);

    /** Where a zone stands and what lies ahead of it. */
    Outlook outlook(Zone zone);

    /** The season of a zone as it would run with one more option carried out. */
    Outlook outlookWith(Zone zone, Option option);

    /** Every option for the next nitrogen pass of a zone, best first. */
    default List<Option> options(Zone zone) {
        return answer(zone).options();
    }

    /** Passes against disease and insects on a zone. */
    default ProtectionAnswer protection(Zone zone) {
        return answer(zone).protection();
    }

    /** What the rigs do in the next seven days; the same seed gives the same plan. */
    Week week(long seed);

    /** The answer to a question, when it is there; who only looks whether it is waits for nothing. */
    default <T> CompletableFuture<T> ask(Question<T> question) {
        return CompletableFuture.completedFuture(question.of(this));
    }

    /** The answer to a question. */
    default <T> T get(Question<T> question) {
        return question.of(this);
    }

    /** The answer if it is there, and is then told at once; else it is being worked out from now on. */
    default <T> Optional<T> find(Question<T> question) {
        CompletableFuture<T> answer = ask(question);
        return answer.isDone() && !answer.isCompletedExceptionally() ? Optional.of(answer.join()) : Optional.empty();
    }

    /** How the search for the week and the work on the fields have come on. Waits for nothing. */
    default Progress progress() {
        return Progress.NONE;
    }

    /** How pieces of a question that is made of others are done. */
    default SideBySide how() {
        return SideBySide.IN_TURN;
    }

    /**
     * How far the work is.
     *
     * @param fields zones that are worked out
     * @param week how far the search for a week has come; empty: no plan stands yet
     */
    record Progress(List<Zone> fields, Optional<Week.Progress> week) {
        public static final Progress NONE = new Progress(List.of(), Optional.empty());

        public Progress {
            fields = List.copyOf(fields);
        }
    }
}
