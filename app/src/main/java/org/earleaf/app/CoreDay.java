// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.earleaf.brief.Brief;
import org.earleaf.brief.Morning;
import org.earleaf.decide.NitrogenOptions;
import org.earleaf.decide.Option;
import org.earleaf.decide.Outlooks;
import org.earleaf.decide.ProtectionAnswer;
import org.earleaf.farm.Farm;
import org.earleaf.field.Zone;
import org.earleaf.outlook.Outlook;
import org.earleaf.week.Week;
import org.jspecify.annotations.Nullable;

/** The answers of core for one farm and day, each computed once and only when asked for. Safe for many threads. */
final class CoreDay implements FarmDay {
    private final Farm farm;
    private final LocalDate on;
    private final boolean hindsight;
    private final Map<Zone, Outlook> outlooks = new ConcurrentHashMap<>();
    private final Map<Zone, NitrogenOptions.Answer> options = new ConcurrentHashMap<>();
    private final Map<Option, Outlook> with = new ConcurrentHashMap<>();
    private final Map<Long, Week> weeks = new ConcurrentHashMap<>();
    private List<NitrogenOptions.Answer> answers = List.of();
    private @Nullable Brief brief;
    private volatile Week.@Nullable Progress progress;

    CoreDay(Farm farm, LocalDate on, boolean hindsight) {
        this.farm = farm;
        this.on = on;
        this.hindsight = hindsight;
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
    public synchronized Brief brief() {
        Brief known = brief;
        if (known == null) {
            answers = Morning.answers(farm, on, hindsight);
            options.putAll(
                    answers.stream().collect(Collectors.toMap(a -> a.outlook().zone(), a -> a)));
            known = Morning.brief(farm, on, answers);
            brief = known;
        }
        return known;
    }

    @Override
    public Outlook outlook(Zone zone) {
        NitrogenOptions.Answer answer = options.get(zone);
        return answer != null
                ? answer.outlook()
                : outlooks.computeIfAbsent(zone, z -> Outlooks.of(farm, z, on, hindsight));
    }

    @Override
    public Outlook outlookWith(Zone zone, Option option) {
        return with.computeIfAbsent(option, o -> Outlooks.with(farm, zone, on, hindsight, o));
    }

    @Override
    public List<Option> options(Zone zone) {
        return answer(zone).options();
    }

    @Override
    public ProtectionAnswer protection(Zone zone) {
        return answer(zone).protection();
    }

    @Override
    public synchronized Week week(long seed) {
        brief();
        return weeks.computeIfAbsent(seed, s -> Week.of(farm, on, answers, s, () -> false, p -> progress = p));
    }

    @Override
    public Optional<Week.Progress> progress() {
        return Optional.ofNullable(progress);
    }

    private NitrogenOptions.Answer answer(Zone zone) {
        return options.computeIfAbsent(zone, z -> NitrogenOptions.of(farm, z, on, hindsight));
    }
}
