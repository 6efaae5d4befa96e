// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.desk;

import com.github.benmanes.caffeine.cache.AsyncCache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.RejectedExecutionException;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.earleaf.decide.NitrogenOptions;
import org.earleaf.farm.Farm;
import org.earleaf.field.Zone;
import org.earleaf.units.SideBySide;
import org.earleaf.week.Week;
import org.jspecify.annotations.Nullable;

/**
 * A farm on a day, asked by many at once: each answer is worked out once, when it is first asked for, and then shared. An
 * answer that failed is told to those who asked and worked out anew for the next.
 */
public final class AskedDay implements QuestionDay {
    /** Answers kept beside two for each zone: passes looked at, weeks asked about. The least used go first. */
    private static final int MOST = 200;
    /** More that are not there yet are not begun: an address can ask for any change of a week. */
    private static final int MOST_OPEN = 100;
    /** It would write every wrong address that somebody asks for into the log. */
    private static final Logger FAILED = Logger.getLogger("com.github.benmanes.caffeine.cache.LocalAsyncCache");

    static {
        FAILED.setLevel(Level.OFF);
    }

    private final Farm farm;
    private final LocalDate on;
    private final Work work;
    private final Threads threads;
    private final AsyncCache<Question<?>, Object> answers;
    private volatile Week.@Nullable Progress progress;
    private volatile boolean past;

    public AskedDay(Farm farm, LocalDate on, Work work, Threads threads) {
        this.farm = farm;
        this.on = on;
        this.work = work;
        this.threads = threads;
        // With a weight of their own, answers that are being worked out are never dropped.
        answers = Caffeine.newBuilder()
                .maximumWeight(MOST + 2L * farm.zones().size())
                .weigher((question, answer) -> 1)
                .buildAsync();
    }

    @Override
    public Farm farm() {
        return farm;
    }

    @Override
    public LocalDate on() {
        return on;
    }

    @Override
    public <T> CompletableFuture<T> ask(Question<T> question) {
        CompletableFuture<Object> known = answers.getIfPresent(question);
        if (known != null && known.isCompletedExceptionally()) {
            // The cache drops it too, but only a moment after those who asked have been told.
            answers.asMap().remove(question, known);
        }
        if (known == null && open() >= MOST_OPEN + 2L * farm.zones().size()) {
            return CompletableFuture.failedFuture(new RejectedExecutionException("too much is being worked out"));
        }
        return answers.get(
                        question,
                        (asked, own) -> CompletableFuture.supplyAsync(() -> workOut(asked), threads.of(asked)))
                .thenApply(AskedDay::<T>cast);
    }

    private long open() {
        return answers.asMap().values().stream().filter(a -> !a.isDone()).count();
    }

    @SuppressWarnings({"unchecked", "TypeParameterUnusedInFormals"})
    private static <T> T cast(Object answer) {
        return (T) answer;
    }

    private Object workOut(Question<?> asked) {
        if (asked instanceof Question.TheBrief of) {
            return work.brief(all(), get(Standing.week(of.told())));
        } else if (asked instanceof Question.TheAnswer of) {
            return work.answer(of.zone());
        } else if (asked instanceof Question.TheOutlook of) {
            // From the whole answer where that is there; the outlook alone is sooner worked out.
            return findAnswer(of.zone()).map(NitrogenOptions.Answer::outlook).orElseGet(() -> work.outlook(of.zone()));
        } else if (asked instanceof Question.TheOutlookWith of) {
            return work.outlookWith(of.zone(), of.option());
        } else if (asked instanceof Question.TheWeek of) {
            return work.week(
                    all(), of.told(), new Week.Search(of.seed(), () -> past, p -> progress = p, threads.inSearches()));
        }
        return asked.of(this);
    }

    /** Of every zone of corn, in the order of the farm; they are worked on side by side. */
    private List<NitrogenOptions.Answer> all() {
        List<CompletableFuture<NitrogenOptions.Answer>> each = Question.modelled(this).stream()
                .map(zone -> ask(new Question.TheAnswer(zone)))
                .toList();
        return each.stream().map(CompletableFuture::join).toList();
    }

    @Override
    public <T> T get(Question<T> question) {
        try {
            return ask(question).join();
        } catch (CompletionException failed) {
            throw cause(failed);
        }
    }

    /** What went wrong where it was worked out. */
    public static RuntimeException cause(Exception failed) {
        Throwable cause = failed;
        while (cause instanceof CompletionException || cause instanceof java.util.concurrent.ExecutionException) {
            cause = cause.getCause();
        }
        return cause instanceof RuntimeException known ? known : new IllegalStateException(failed);
    }

    /** Waits for nothing. */
    private Optional<NitrogenOptions.Answer> findAnswer(Zone zone) {
        CompletableFuture<Object> known = answers.getIfPresent(new Question.TheAnswer(zone));
        return known == null || !known.isDone() || known.isCompletedExceptionally()
                ? Optional.empty()
                : Optional.of(AskedDay.<NitrogenOptions.Answer>cast(known.join()));
    }

    @Override
    public SideBySide how() {
        return threads.inSearches();
    }

    @Override
    public Progress progress() {
        List<Zone> done =
                farm.zones().stream().filter(z -> findAnswer(z).isPresent()).toList();
        return new Progress(done, Optional.ofNullable(progress));
    }

    /** Other facts have taken the place of these: a search that is under way ends with what it has. */
    void end() {
        past = true;
    }
}
