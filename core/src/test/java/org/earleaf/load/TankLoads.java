// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.earleaf.field.FieldPart;
import org.earleaf.label.DropletClass;
import org.earleaf.mix.Amount;
import org.earleaf.mix.LabelWork;
import org.earleaf.units.Units;

/** A load of two invented products on one field, and its way to the ground. */
public final class TankLoads {
    public static final Instant T = Instant.parse("2026-07-20T12:00:00Z");
    public static final LocalDate DAY = LocalDate.of(2026, 7, 20);
    public static final double HA = 32;

    private TankLoads() {}

    public static LoadGround mill() {
        return new LoadGround(
                new FieldPart("Mill Eighty", ""),
                new LabelWork.Ground(HA, HA, 40, 40),
                new LabelWork.Standing(
                        "corn", LocalDate.of(2025, 10, 1), 31, 2.4, Optional.of(LocalDate.of(2026, 9, 25))),
                DAY);
    }

    /** 10 fl oz/ac and 2 oz/ac at 15 gal/ac on the whole field. */
    public static LoadLine f1() {
        double perHa = Labels.flozAc(10);
        return new LoadLine(
                2,
                new LoadLine.Goods("Demo F1", false, true, Set.of("INVENTED-1", "F1-0426"), Set.of("SC", "fungicide")),
                perHa,
                new Amount(perHa * HA / 1000, false, "fl oz"),
                Labels.flozAc(12) * HA / 1000,
                List.of());
    }

    public static LoadLine i2() {
        double perHa = 2 * Units.KGHA_PER_LBAC / 16;
        return new LoadLine(
                1,
                new LoadLine.Goods("Demo I2", true, true, Set.of("INVENTED-3"), Set.of("WG", "insecticide")),
                perHa,
                new Amount(perHa * HA, true, "oz"),
                Double.NaN,
                List.of());
    }

    public static TankLoad planned() {
        double rate = 15 * Units.M3M2_PER_GALAC;
        return TankLoad.planned(
                TankLoad.Ticket.of("load 1", "tassel pass", "Highboy", DAY),
                new TankLoad.Fill(rate * HA * 10_000, 0, rate, false),
                new LabelWork.Driving(Optional.of(DropletClass.M), .5, 4, true),
                List.of(mill()),
                List.of(i2(), f1()));
    }

    public static List<LabelFinding> findings(TankLoad load) {
        return LabelCheck.of(Labels.BOOK, load.work(load.grounds().get(0)), List.of());
    }

    public static TankLoad reserved() {
        return planned().reserved(findings(planned()), "A. Grower", T);
    }

    /** All that is looked at before mixing, on a calibration that holds. */
    public static final MixStart LOOKED = new MixStart(Set.of(BeforeMixing.values()), Optional.empty(), "");

    public static TankLoad mixing() {
        return reserved().mixing(TankLoads.LOOKED, "A. Grower", T);
    }

    public static LoadLine.Key key(LoadLine line, String person, int second) {
        String code = line.codes().stream().sorted().findFirst().orElseThrow();
        return new LoadLine.Key(code, line.planned().inside(), person, T.plusSeconds(second), "");
    }

    public static TankLoad keyed() {
        return mixing().key(1, key(i2(), "A. Grower", 10))
                .key(1, key(i2(), "B. Helper", 20))
                .key(2, key(f1(), "A. Grower", 30))
                .key(2, key(f1(), "A. Grower", 60));
    }

    public static MixGate gate(TankLoad load) {
        return MixGate.of(load, DAY, findings(load), new MixGate.Yard(true, true, true, true));
    }

    public static TankLoad mixed() {
        return keyed().mixed(gate(keyed()), "A. Grower", T.plusSeconds(90));
    }
}
