// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import org.earleaf.app.web.Fixture;
import org.earleaf.brief.Brief;
import org.earleaf.decide.NitrogenOptions;
import org.earleaf.decide.Option;
import org.earleaf.field.Zone;
import org.earleaf.outlook.Outlook;
import org.earleaf.units.EarleafException;
import org.earleaf.week.Week;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class AskedDayTest {
    /** One of each: what would wait for a thread behind another would wait for ever. */
    private final Threads threads = new Threads(new ForkJoinPool(1), new ForkJoinPool(1));

    private AskedDay day(Work work) {
        return new AskedDay(new Fixture().farm(), Fixture.TODAY, work, threads);
    }

    @AfterEach
    void stop() {
        threads.answers().shutdownNow();
        threads.searches().shutdownNow();
    }

    @Test
    void an_answer_is_worked_out_once_however_many_ask_at_once() {
        StubWork work = new StubWork(true, false);
        AskedDay day = day(work);
        List<CompletableFuture<Brief>> asked = IntStream.range(0, 40)
                .mapToObj(k -> day.ask(new Question.TheBrief(List.of())))
                .toList();
        assertThat(asked).noneMatch(CompletableFuture::isDone);
        work.fields.countDown();
        Brief first = asked.get(0).join();
        assertThat(asked).allSatisfy(each -> assertThat(each.join()).isSameAs(first));
        assertThat(day.brief()).isSameAs(first);
        assertThat(work.times("brief of 5")).isEqualTo(1);
        assertThat(work.times("Mill Eighty")).isEqualTo(1);
        assertThat(day.options(Fixture.MILL)).isNotEmpty();
        assertThat(work.times("Mill Eighty")).as("known from the brief").isEqualTo(1);
        assertThat(day.progress().fields()).hasSize(5);
    }

    @Test
    void the_fields_are_had_while_the_search_for_a_week_is_held_open_and_the_brief_waits_for_it() {
        StubWork work = new StubWork(false, true);
        AskedDay day = day(work);
        CompletableFuture<?> week = day.ask(Standing.week(List.of()));
        CompletableFuture<Brief> brief = day.ask(new Question.TheBrief(List.of()));
        List<Option> options = day.options(Fixture.MILL);
        assertThat(options).isNotEmpty();
        assertThat(day.outlookWith(Fixture.MILL, options.get(0)).zone()).isEqualTo(Fixture.MILL);
        assertThat(week).isNotDone();
        assertThat(brief).isNotDone();
        assertThat(day.find(Standing.week(List.of()))).isEmpty();
        work.week.countDown();
        assertThat(week.join()).isNotNull();
        assertThat(brief.join().passes()).isNotEmpty();
        assertThat(work.times("week of 5")).isEqualTo(1);
        assertThat(day.progress().week())
                .hasValueSatisfying(p -> assertThat(p.best_usd()).isEqualTo(4805));
    }

    /** A question whose answer fails at first. */
    private record Flawed(AtomicInteger tries) implements Question<String> {
        @Override
        public String of(FarmDay day) {
            if (tries.incrementAndGet() == 1) {
                throw EarleafException.coded("plan.empty", "plan", "a plough");
            }
            return "told";
        }
    }

    @Test
    void an_answer_that_failed_is_told_as_it_failed_and_worked_out_anew() {
        AskedDay day = day(new StubWork(false, false));
        Flawed flawed = new Flawed(new AtomicInteger());
        assertThatThrownBy(() -> day.get(flawed))
                .isInstanceOf(EarleafException.class)
                .hasMessageContaining("plough");
        assertThat(day.get(flawed)).isEqualTo("told");
    }

    /** One of many that stay open. */
    private record Open(int number, CountDownLatch gate) implements Question<Integer> {
        @Override
        public Integer of(FarmDay day) {
            try {
                gate.await();
            } catch (InterruptedException stopped) {
                Thread.currentThread().interrupt();
            }
            return number;
        }
    }

    @Test
    void more_than_can_be_worked_out_soon_is_not_begun_and_what_is_known_is_told() {
        AskedDay day = day(new StubWork(false, false));
        Brief brief = day.brief();
        CountDownLatch gate = new CountDownLatch(1);
        List<CompletableFuture<Integer>> all = IntStream.range(0, 1000)
                .mapToObj(k -> day.ask(new Open(k, gate)))
                .toList();
        assertThat(all)
                .filteredOn(CompletableFuture::isDone)
                .hasSizeGreaterThan(800)
                .allSatisfy(refused ->
                        assertThatThrownBy(refused::join).hasCauseInstanceOf(RejectedExecutionException.class));
        assertThat(day.brief()).isSameAs(brief);
        gate.countDown();
    }

    @Test
    void a_search_is_told_to_end_when_the_farm_is_another() {
        CompletableFuture<BooleanSupplier> stop = new CompletableFuture<>();
        AskedDay day = day(new Work() {
            private final StubWork stub = new StubWork(false, false);

            @Override
            public NitrogenOptions.Answer answer(Zone zone) {
                return stub.answer(zone);
            }

            @Override
            public Outlook outlook(Zone zone) {
                return stub.outlook(zone);
            }

            @Override
            public Outlook outlookWith(Zone zone, Option option) {
                return stub.outlookWith(zone, option);
            }

            @Override
            public Brief brief(List<NitrogenOptions.Answer> answers, Week week) {
                return stub.brief(answers, week);
            }

            @Override
            public Week week(List<NitrogenOptions.Answer> answers, List<Week.Told> told, Week.Search search) {
                stop.complete(search.stop());
                return stub.week(answers, told, search);
            }
        });
        day.week(1);
        assertThat(stop.join().getAsBoolean()).isFalse();
        day.end();
        assertThat(stop.join().getAsBoolean()).isTrue();
    }
}
