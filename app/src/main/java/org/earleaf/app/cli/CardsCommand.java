// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import org.earleaf.app.words.Words;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.earleaf.card.CardReader;
import org.earleaf.card.CardReading;
import org.earleaf.card.CardUse;
import org.earleaf.entry.Ranges;
import org.earleaf.exchange.CardImage;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Figure;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code earleaf cards}: reads scans of water-sensitive paper. */
@Command(
        name = "cards",
        mixinStandardHelpOptions = true,
        description = "Reads flat scans of water-sensitive paper: how much is stained, by how many drops, of what size,"
                + " and whether that serves. Cut each scan to its card first.")
public final class CardsCommand implements Runnable {
    private static final int DIGITS = 3;
    static final String ASSUMED =
            "assumption: drop sizes and deposit rest on a recalled spread of stains of water; calibrate the paper with"
                    + " drops of known size before relying on them. Cover and counts do not rest on it.";
    static final String MANY =
            "One card says little: cards of one pass differ widely. Hang at least 12 at each place and side.";

    @Spec
    private @Nullable CommandSpec spec;

    @Mixin
    private final Common common = new Common();

    @Parameters(arity = "1..*", paramLabel = "PICTURE", description = "PNG or JPEG, one card each.")
    private List<Path> pictures = new ArrayList<>();

    @Option(names = "--dpi", required = true, paramLabel = "1200", description = "Dots per inch of the scan.")
    private String dpi = "";

    @Option(names = "--margin", paramLabel = "'1 mm'", description = "Left out on every side (default: 1 mm).")
    private String margin = "1 mm";

    @Option(
            names = "--for",
            paramLabel = "PURPOSE",
            description = "What the pass was for: insecticide, 'herbicide before emergence', 'contact herbicide',"
                    + " 'contact fungicide', 'systemic fungicide'.")
    private String purpose = "";

    private record Read(Path file, CardReading reading) {}

    @Override
    public void run() {
        Optional<CardUse> use = purpose.isEmpty() ? Optional.empty() : Optional.of(use());
        double margin_m = Ranges.CARD_MARGIN.read(margin, "--margin");
        double dots = Ranges.CARD_DPI.read(dpi, "--dpi");
        CardReader usual = CardReader.usual();
        CardReader reader = new CardReader(margin_m * 1e6, usual.leastStain_um(), usual.spread());
        List<Read> read = new ArrayList<>();
        for (Path file : pictures) {
            try {
                read.add(new Read(file, reader.read(CardImage.read(file, dots))));
            } catch (IllegalArgumentException small) {
                throw EarleafException.of(
                        String.valueOf(file.getFileName()),
                        "a picture smaller than its margins",
                        "more than " + margin + " on every side",
                        "Give a smaller --margin, or the dots per inch at which it was scanned.");
            }
        }
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        if (common.isJson()) {
            out.println(Json.text(Json.object(
                    "cards", read.stream().map(r -> json(r, use)).toList(), "remarks", List.of(ASSUMED, MANY))));
        } else {
            read.forEach(r -> print(r, use, out));
            out.println(ASSUMED);
            out.println(MANY);
        }
    }

    private CardUse use() {
        return Arrays.stream(CardUse.values())
                .filter(u -> Words.US.say(u).equalsIgnoreCase(purpose.strip()))
                .findFirst()
                .orElseThrow(() -> EarleafException.of(
                        "--for",
                        "\"" + purpose + "\"",
                        Arrays.stream(CardUse.values()).map(Words.US::say).collect(Collectors.joining(", ")),
                        "Give one of them."));
    }

    private static Map<String, @Nullable Object> json(Read read, Optional<CardUse> use) {
        CardReading r = read.reading();
        Optional<CardReading.Sizes> sizes = r.sizes();
        return Json.object(
                "picture",
                String.valueOf(read.file().getFileName()),
                "area_cm2",
                r.area_cm2(),
                "cover",
                r.cover(),
                "patches_cm2",
                r.counted_cm2(),
                "stains_cm2",
                r.stains_cm2(),
                "scuffs",
                r.scuffs(),
                "crowded",
                r.isCrowded(),
                "stain_um",
                sizes.map(CardReading.Sizes::stain_um),
                "volume_10_um",
                sizes.map(CardReading.Sizes::v10_um),
                "volume_50_um",
                sizes.map(CardReading.Sizes::v50_um),
                "volume_90_um",
                sizes.map(CardReading.Sizes::v90_um),
                "deposit_ul_cm2",
                sizes.map(CardReading.Sizes::deposit_ulCm2),
                "verdict",
                use.map(u -> Words.US.say(r.verdict(u))));
    }

    private static void print(Read read, Optional<CardUse> use, PrintWriter out) {
        CardReading r = read.reading();
        out.println(read.file().getFileName());
        line(out, "covered", figure(r.cover() * 100) + " % of " + figure(r.area_cm2()) + " cm2");
        line(
                out,
                "stains",
                r.stains_cm2()
                        .map(n -> figure(n) + "/cm2 (counted " + figure(r.counted_cm2()) + ", the rest lie on others)")
                        .orElse("too crowded to count"));
        r.sizes().ifPresent(s -> {
            line(out, "middle", "stain " + figure(s.stain_um()) + " um");
            line(
                    out,
                    "drops",
                    "half the volume below " + figure(s.v50_um()) + " um (a tenth below " + figure(s.v10_um())
                            + ", nine tenths below " + figure(s.v90_um()) + "), assumption");
            line(out, "deposit", figure(s.deposit_ulCm2()) + " uL/cm2, assumption");
        });
        if (r.isCrowded()) {
            line(out, "note", "more than a fifth is covered: counts and sizes lean on the correction for overlap");
        }
        if (r.scuffs() > 0) {
            line(out, "note", r.scuffs() + " patches are scratched or have run");
        }
        use.ifPresent(u -> line(
                out,
                "verdict",
                Words.US.say(r.verdict(u)) + " (" + Words.US.say(u) + ": " + figure(u.least_cm2()) + " to " + figure(u.most_cm2())
                        + "/cm2)"));
        out.println();
    }

    private static String figure(double value) {
        return Figure.text(value, DIGITS);
    }

    private static void line(PrintWriter out, String word, String text) {
        out.printf("%-9s %s%n", word, text);
    }
}
