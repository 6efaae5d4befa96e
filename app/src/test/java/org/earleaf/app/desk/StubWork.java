// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.desk;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.earleaf.app.web.Fixture;
import org.earleaf.brief.Brief;
import org.earleaf.decide.NitrogenOptions;
import org.earleaf.decide.Option;
import org.earleaf.field.Zone;
import org.earleaf.outlook.Outlook;
import org.earleaf.week.Week;

/** The fixture's answers, held back as long as a test wants, and counted. */
public final class StubWork implements Work {
    private final Fixture fixture = new Fixture();
    private final Map<String, AtomicInteger> worked = new ConcurrentHashMap<>();
    /** Fields wait for the first, the week for the second. */
    public final CountDownLatch fields;

    public final CountDownLatch week;

    public StubWork(boolean holdsFields, boolean holdsWeek) {
        fields = new CountDownLatch(holdsFields ? 1 : 0);
        week = new CountDownLatch(holdsWeek ? 1 : 0);
    }

    int times(String what) {
        return worked.getOrDefault(what, new AtomicInteger()).get();
    }

    private void work(String what, CountDownLatch gate) {
        worked.computeIfAbsent(what, w -> new AtomicInteger()).incrementAndGet();
        try {
            if (!gate.await(5, TimeUnit.MINUTES)) {
                throw new IllegalStateException(what + " was never let go");
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(stopped);
        }
    }

    @Override
    public NitrogenOptions.Answer answer(Zone zone) {
        work(zone.label(), fields);
        return fixture.answer(zone);
    }

    @Override
    public Outlook outlook(Zone zone) {
        work("outlook", fields);
        return fixture.outlook(zone);
    }

    @Override
    public Outlook outlookWith(Zone zone, Option option) {
        work("with", fields);
        return fixture.outlookWith(zone, option);
    }

    @Override
    public Brief brief(List<NitrogenOptions.Answer> answers, Week week) {
        work("brief of " + answers.size(), fields);
        return fixture.brief();
    }

    @Override
    public Week week(List<NitrogenOptions.Answer> answers, List<Week.Told> told, Week.Search search) {
        search.progress().accept(new Week.Progress(5000, 4805));
        work("week of " + answers.size(), week);
        return fixture.week(search.seed());
    }
}
