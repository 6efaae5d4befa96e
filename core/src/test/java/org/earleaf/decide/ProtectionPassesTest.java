// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.earleaf.farm.Farm;
import org.earleaf.field.Disease;
import org.earleaf.field.Purpose;
import org.earleaf.field.Reading;
import org.earleaf.label.LabelEntry;
import org.earleaf.label.LabelItem;
import org.earleaf.label.LabelLimit;
import org.earleaf.outlook.Baseline;
import org.earleaf.outlook.ZoneEnsemble;
import org.earleaf.pressure.CropAhead;
import org.earleaf.units.Measure;
import org.earleaf.units.RecordCopy;
import org.earleaf.units.Said;
import org.junit.jupiter.api.Test;

/** Rules that must hold on an invented farm; there is no outside source for its figures. */
class ProtectionPassesTest {
    private static final LocalDate ON = LocalDate.of(2024, 7, 12);

    private static ProtectionAnswer answer(SprayFarm farm, LocalDate on) {
        Farm f = farm.farm();
        ZoneEnsemble futures = ZoneEnsemble.of(f, f.zones().get(0), on, false);
        return ProtectionPasses.of(futures, new Baseline(futures, futures.season()));
    }

    private static SprayFarm scouted(int of100) {
        return new SprayFarm().lesions(ON.minusDays(1), of100);
    }

    private static List<Option> fungicides(ProtectionAnswer answer) {
        return answer.options().stream()
                .filter(o -> o.kind() == Purpose.FUNGICIDE)
                .toList();
    }

    private static List<Said> refusals(Option o) {
        return o.refusals().stream().map(Reason::said).toList();
    }

    @Test
    void above_the_threshold_the_best_day_that_pays_is_proposed_and_its_worth_adds_up() {
        ProtectionAnswer answer = answer(scouted(80), ON);
        Option go = answer.proposed().orElseThrow();
        assertThat(go.kind()).isEqualTo(Purpose.FUNGICIDE);
        assertThat(go.mayBeMade()).isTrue();
        assertThat(go.worth().mean_usdHa()).isPositive();
        assertThat(go.worth().p10_usdHa()).isLessThan(go.worth().mean_usdHa());
        assertThat(go.spray().orElseThrow().assumptions()).isNotEmpty();
        assertThat(go.spray().orElseThrow().mix().parts())
                .extracting(p -> p.product().name())
                .containsExactly("F1", "Spreader");
        boolean refused = false;
        for (Option o : answer.options()) {
            refused |= !o.mayBeMade();
            assertThat(o.mayBeMade()).as("those that may be made come first").isEqualTo(!refused);
        }
    }

    /** Published: from tassel to brown silk is best, tassel to silk usual. From two weeks before tassel until it is past. */
    @Test
    void between_days_worth_the_same_the_pass_goes_at_tassel_to_silk() {
        int looked = 0;
        for (int ahead = -9; ahead <= 9; ahead += 3) {
            LocalDate on = ON.plusDays(ahead);
            SprayFarm farm = new SprayFarm().lesions(on.minusDays(1), 80);
            Optional<Option> go = answer(farm, on).proposed();
            List<CropAhead> crops = crops(farm, on);
            if (go.isPresent() && share(crops, on.plusDays(1)) > .5
                    || on.isBefore(crops.get(0).vt())) {
                assertThat(share(crops, go.orElseThrow().date()))
                        .as("from %s", on)
                        .isGreaterThan(.5);
                looked++;
            }
        }
        assertThat(looked).isPositive();
    }

    private static double share(List<CropAhead> crops, LocalDate day) {
        return (double) crops.stream().filter(c -> c.isTasselToSilk(day)).count() / crops.size();
    }

    private static List<CropAhead> crops(SprayFarm farm, LocalDate on) {
        Farm f = farm.farm();
        ZoneEnsemble futures = ZoneEnsemble.of(f, f.zones().get(0), on, false);
        Baseline base = new Baseline(futures, futures.season());
        return base.stages()
                .ahead(
                        base.yields_kgHa(),
                        base.trace(),
                        futures.season().setup().calendar().silk());
    }

    @Test
    void tar_spot_found_moves_the_advice_tells_its_doubt_and_when_to_look_again() {
        assertThat(answer(new SprayFarm(), ON).leftOut().get(0).reason().code()).isEqualTo("protect.not-scouted");
        SprayFarm found = new SprayFarm().lesions(Disease.TAR_SPOT, ON.minusDays(1), 60);
        ProtectionAnswer answer = answer(found, ON);
        Option go = answer.proposed().orElseThrow();
        assertThat(go.why()).extracting(r -> r.said().code()).contains("tar-spot.ahead", "tar-spot.next");
        assertThat(go.date()).isBefore(crops(found, ON).get(0).r4());
        assertThat(answer.readings()).noneMatch(r -> r.kind() == Reading.Kind.LESIONS);
        ProtectionAnswer later = answer(new SprayFarm().lesions(Disease.TAR_SPOT, ON.minusDays(8), 60), ON);
        assertThat(later.readings())
                .filteredOn(r -> r.kind() == Reading.Kind.LESIONS)
                .singleElement()
                .satisfies(r -> assertThat(r.because().toString()).contains("scout.tar-spot-again"));
    }

    @Test
    void tar_spot_is_told_where_no_pass_goes_and_before_tassel() {
        LabelEntry unread = SprayFarm.label(
                "F1", "FRAC 11", LabelLimit.noneStated(), LabelLimit.noneStated(), LabelLimit.notEntered());
        ProtectionAnswer closed = answer(
                new SprayFarm().lesions(Disease.TAR_SPOT, ON.minusDays(1), 60).label(unread), ON);
        assertThat(closed.proposed()).isEmpty();
        assertThat(closed.leftOut().get(0).reason().code()).isEqualTo("left-out.tar-spot");
        assertThat(closed.leftOut().get(0).reason().toString()).contains("tar-spot.ahead", "label.not-entered");
        LocalDate early = LocalDate.of(2024, 6, 10);
        // Three weeks ahead end about at the tassel: some days are looked at, and on none is it out in all years.
        List<LocalDate> tassels = crops(new SprayFarm(), ON.minusDays(20)).stream()
                .map(CropAhead::vt)
                .sorted()
                .toList();
        LocalDate near = tassels.get(tassels.size() / 2).minusDays(20);
        ProtectionAnswer weeks = answer(new SprayFarm().lesions(Disease.TAR_SPOT, near.minusDays(2), 4), near);
        assertThat(weeks.proposed()).isEmpty();
        assertThat(weeks.leftOut().get(0).reason().code()).isEqualTo("left-out.tar-spot-early");
        ProtectionAnswer before = answer(new SprayFarm().lesions(Disease.TAR_SPOT, early.minusDays(2), 4), early);
        assertThat(before.leftOut()).singleElement().satisfies(l -> {
            assertThat(l.reason().code()).isEqualTo("left-out.tar-spot-early");
            assertThat(l.soon()).isTrue();
        });
    }

    @Test
    void an_insecticide_that_nothing_asks_for_is_left_out_with_its_reason() {
        ProtectionAnswer answer = answer(scouted(80), ON);
        assertThat(answer.options())
                .filteredOn(o -> o.kind().name().contains("INSECTICIDE"))
                .isNotEmpty()
                .noneMatch(Option::mayBeMade);
        assertThat(answer.leftOut())
                .filteredOn(l -> l.kind() == Purpose.INSECTICIDE)
                .singleElement()
                .extracting(l -> l.reason().code())
                .isEqualTo("protect.insecticide-no-count");
    }

    @Test
    void below_undecided_or_unseen_nothing_is_proposed_and_the_next_look_is_asked_for() {
        ProtectionAnswer below = answer(scouted(10), ON);
        assertThat(below.proposed()).isEmpty();
        assertThat(below.leftOut().get(0).reason().code()).isEqualTo("protect.below-threshold");
        ProtectionAnswer open = answer(scouted(52), ON);
        assertThat(open.proposed()).isEmpty();
        assertThat(open.leftOut().get(0).reason().toString())
                .startsWith("threshold.not-clear")
                .contains("threshold.look-at-more");
        assertThat(open.readings())
                .anyMatch(r -> r.kind() == Reading.Kind.LESIONS
                        && r.because().toString().contains("threshold.look-at-more"));
        ProtectionAnswer unseen = answer(new SprayFarm(), ON);
        assertThat(unseen.proposed()).isEmpty();
        assertThat(unseen.leftOut().get(0).reason()).isEqualTo(Said.of("protect.not-scouted"));
        assertThat(unseen.readings()).anyMatch(r -> r.worth_usdHa() > 0);
    }

    @Test
    void a_label_that_was_not_entered_closes_the_pass_whatever_it_is_worth() {
        LabelEntry unread = SprayFarm.label(
                "F1", "FRAC 11", LabelLimit.noneStated(), LabelLimit.noneStated(), LabelLimit.notEntered());
        ProtectionAnswer answer = answer(scouted(80).label(unread), ON);
        assertThat(answer.proposed()).isEmpty();
        assertThat(fungicides(answer)).isNotEmpty().allSatisfy(o -> assertThat(refusals(o))
                .contains(Said.of("label.not-entered", "product", "F1", "missing", List.of(LabelItem.HARVEST))));
        assertThat(answer.leftOut().get(0).reason().code()).isEqualTo("label.not-entered");
    }

    @Test
    void a_label_that_waits_for_its_second_look_closes_the_pass() {
        LabelEntry read = SprayFarm.label("F1", "FRAC 11", LabelLimit.of(30), LabelLimit.of(34), LabelLimit.of(30));
        LabelEntry once = RecordCopy.with(read, "look", LabelEntry.Look.first("A", java.time.Instant.EPOCH));
        ProtectionAnswer answer = answer(scouted(80).label(once), ON);
        assertThat(answer.proposed()).isEmpty();
    }

    @Test
    void the_label_s_stage_and_days_before_harvest_bind() {
        LabelEntry lateOnly =
                SprayFarm.label("F1", "FRAC 11", LabelLimit.of(34), LabelLimit.noneStated(), LabelLimit.of(7));
        assertThat(fungicides(answer(scouted(80).label(lateOnly), ON)).stream()
                        .filter(o -> o.date().isBefore(ON.plusDays(7))))
                .isNotEmpty()
                .allSatisfy(o -> assertThat(refusals(o)).anySatisfy(r -> {
                    assertThat(r.code()).isEqualTo("label.before-stage");
                    assertThat(r.values()).containsEntry("stage", "R4");
                }));
        LabelEntry long_ = SprayFarm.label("F1", "FRAC 11", LabelLimit.of(30), LabelLimit.of(34), LabelLimit.of(90));
        assertThat(fungicides(answer(scouted(80).label(long_), ON)))
                .isNotEmpty()
                .allSatisfy(o -> assertThat(refusals(o)).anySatisfy(r -> {
                    assertThat(r.code()).isEqualTo("label.before-harvest");
                    assertThat(r.values()).containsEntry("days", Measure.DAYS.of(90));
                }));
    }

    @Test
    void a_rig_that_does_not_clear_the_crop_may_not_go_and_what_it_would_bend_is_counted() {
        ProtectionAnswer low = answer(scouted(80).clearance(60), ON);
        assertThat(low.proposed()).isEmpty();
        assertThat(fungicides(low))
                .isNotEmpty()
                .allSatisfy(o -> assertThat(refusals(o)).extracting(Said::code).contains("reach.too-tall"));
        double bent = fungicides(low).get(0).worth().mean_usdHa();
        double clear = fungicides(answer(scouted(80), ON)).get(0).worth().mean_usdHa();
        assertThat(bent).isLessThan(clear);
    }

    @Test
    void weeks_before_tassel_it_says_when_to_scout_and_the_morning_is_silent() {
        ProtectionAnswer early = answer(new SprayFarm(), LocalDate.of(2024, 6, 10));
        assertThat(early.options()).isEmpty();
        assertThat(early.readings()).isEmpty();
        assertThat(early.leftOut())
                .singleElement()
                .satisfies(l -> assertThat(l.reason().code()).startsWith("left-out.before-tassel"))
                .extracting(ProtectionAnswer.LeftOut::soon)
                .isEqualTo(false);
    }

    @Test
    void the_same_farm_gives_the_same_answer() {
        assertThat(answer(scouted(80), ON).options().toString().replaceAll("Lambda[^,\\]]*", ""))
                .isEqualTo(answer(scouted(80), ON).options().toString().replaceAll("Lambda[^,\\]]*", ""));
    }

    @Test
    void stages_of_every_member_come_in_order_around_those_of_the_mean() {
        Farm f = new SprayFarm().farm();
        ZoneEnsemble futures = ZoneEnsemble.of(f, f.zones().get(0), LocalDate.of(2024, 6, 20), false);
        Baseline base = new Baseline(futures, futures.season());
        double silk_gdd = futures.season().setup().calendar().silk();
        List<CropAhead> crops = base.stages().ahead(base.yields_kgHa(), base.trace(), silk_gdd);
        assertThat(crops).hasSize(ZoneEnsemble.MEMBERS).allSatisfy(c -> assertThat(
                        List.of(c.v8(), c.vt(), c.r1(), c.r2(), c.r3(), c.r4(), c.r5()))
                .isSorted());
        LocalDate silk = base.spread(base.end()::silkDay).p50().orElseThrow();
        LocalDate r1 = crops.stream().map(CropAhead::r1).sorted().toList().get(50);
        assertThat(r1).isBetween(silk.minusDays(1), silk.plusDays(1));
    }

    @Test
    void mixes_are_those_of_the_recipes_and_never_hold_a_herbicide() {
        assertThat(SprayMix.of(new SprayFarm().farm()))
                .extracting(SprayMix::names, SprayMix::kind)
                .containsExactlyInAnyOrder(
                        org.assertj.core.groups.Tuple.tuple("F1", Purpose.FUNGICIDE),
                        org.assertj.core.groups.Tuple.tuple("F1 + I1", Purpose.FUNGICIDE_AND_INSECTICIDE),
                        org.assertj.core.groups.Tuple.tuple("I1", Purpose.INSECTICIDE));
    }
}
