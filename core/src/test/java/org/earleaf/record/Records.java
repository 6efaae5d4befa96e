// SPDX-License-Identifier: Apache-2.0
package org.earleaf.record;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.earleaf.field.FieldPart;

/** Invented records for tests: one plain, one registered, and as many random ones as wanted. */
final class Records {
    static final ZoneId CENTRAL = ZoneId.of("America/Chicago");
    private static final String[] WORDS = {
        "Home Eighty", "", "line\nbreak", "back\\slash \\n", "colon: here", "Ünïcödé ✓", "extra x: 1", "\r\n", " blank "
    };

    private Records() {}

    static FiledRecord fertiliser() {
        return new FiledRecord(
                FiledRecord.Filing.first("r1", Instant.parse("2026-06-30T22:15:00Z"), "A. Grower"),
                "passes.csv row 2",
                new FiledRecord.Treated(new FieldPart("Home Eighty", ""), "", "corn", Amount.parse("72 ac", "area")),
                new FiledRecord.Work(
                        "row-base dribble", "highboy", LocalDate.of(2026, 6, 30), Optional.empty(), Optional.empty()),
                List.of(ProductUse.fertiliser("UAN 32", Amount.parse("812.50 gal", "amount"), "40 lb N/ac")),
                Applicator.onOwnGround("A. Grower", ""),
                new TreeMap<>());
    }

    static FiledRecord fungicide(String certification, String location) {
        FiledRecord r = fertiliser();
        return new FiledRecord(
                FiledRecord.Filing.first("r2", r.filed(), r.filedBy()),
                "p2",
                new FiledRecord.Treated(new FieldPart(r.field(), ""), location, "corn", r.area()),
                new FiledRecord.Work(
                        "over the top",
                        "highboy",
                        r.date(),
                        Optional.of(ZonedDateTime.of(2026, 6, 30, 9, 0, 0, 0, CENTRAL)),
                        Optional.of(ZonedDateTime.of(2026, 6, 30, 11, 30, 0, 0, CENTRAL))),
                List.of(new ProductUse(
                        "Demo F1",
                        "DEMO-0001",
                        Amount.parse("864 fl oz", "amount"),
                        "12 fl oz/ac",
                        "L7",
                        OptionalInt.of(12))),
                Applicator.onOwnGround("A. Grower", certification),
                new TreeMap<>());
    }

    static FiledRecord random(SplittableRandom random, int number) {
        List<ProductUse> products = new ArrayList<>();
        int count = 1 + random.nextInt(3);
        for (int k = 0; k < count; k++) {
            Amount amount = new Amount(BigDecimal.valueOf(random.nextLong(1, 1_000_000), random.nextInt(4)), "gal");
            OptionalInt reentry = random.nextBoolean() ? OptionalInt.of(random.nextInt(72)) : OptionalInt.empty();
            products.add(new ProductUse(
                    "product " + word(random), word(random), amount, word(random), word(random), reentry));
        }
        TreeMap<String, String> extras = new TreeMap<>();
        for (int k = random.nextInt(4); k > 0; k--) {
            extras.put("entry " + "abcdefgh".charAt(random.nextInt(8)), word(random));
        }
        ZonedDateTime end = Instant.ofEpochSecond(random.nextLong(1_750_000_000L, 1_790_000_000L))
                .atZone(CENTRAL);
        Optional<ZonedDateTime> known = random.nextBoolean() ? Optional.of(end) : Optional.empty();
        return new FiledRecord(
                new FiledRecord.Filing(
                        "r" + number,
                        word(random),
                        word(random),
                        end.toInstant().plusSeconds(3600),
                        word(random)),
                word(random),
                new FiledRecord.Treated(
                        new FieldPart(word(random), word(random)),
                        word(random),
                        word(random),
                        Amount.parse("7" + number + ".0 ac", "area")),
                new FiledRecord.Work(
                        word(random), word(random), end.toLocalDate(), known.map(e -> e.minusHours(1)), known),
                products,
                new Applicator(
                        Applicator.Kind.values()[random.nextInt(2)],
                        word(random),
                        word(random),
                        word(random),
                        word(random),
                        word(random),
                        word(random)),
                extras);
    }

    private static String word(SplittableRandom random) {
        return WORDS[random.nextInt(WORDS.length)];
    }
}
