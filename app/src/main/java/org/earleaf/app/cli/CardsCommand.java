// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import static org.earleaf.app.words.Words.tell;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import org.earleaf.app.words.Words;
import org.earleaf.card.CardReader;
import org.earleaf.card.CardReading;
import org.earleaf.card.CardUse;
import org.earleaf.entry.Ranges;
import org.earleaf.exchange.CardImage;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Figure;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code earleaf cards}: reads scans of water-sensitive paper. */
@Command(name = "cards", mixinStandardHelpOptions = true)
public final class CardsCommand implements Runnable {
    private static final int DIGITS = 3;

    @Spec
    private @Nullable CommandSpec spec;

    @Mixin
    private final Common common = new Common();

    @Parameters(arity = "1..*", paramLabel = "PICTURE", descriptionKey = "cli.cards.option.picture")
    private List<Path> pictures = new ArrayList<>();

    @Option(names = "--dpi", required = true, paramLabel = "1200", descriptionKey = "cli.cards.option.dpi")
    private String dpi = "";

    @Option(names = "--margin", paramLabel = "'1 mm'", descriptionKey = "cli.cards.option.margin")
    private String margin = "1 mm";

    @Option(names = "--for", paramLabel = "PURPOSE", descriptionKey = "cli.cards.option.for")
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
                throw new EarleafException(Problem.of(
                        "cards.more-than-on-every-side",
                        Said.text(String.valueOf(file.getFileName())),
                        Said.of("found.a-picture-smaller-than"),
                        "margin",
                        margin));
            }
        }
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        if (common.isJson()) {
            out.println(Json.text(
                    Json.object("cards", read.stream().map(r -> json(r, use)).toList(), "remarks", remarks())));
        } else {
            read.forEach(r -> print(r, use, out));
            remarks().forEach(out::println);
        }
    }

    private static List<String> remarks() {
        return List.of(tell("cli.cards.assumed"), tell("cli.cards.many"));
    }

    private CardUse use() {
        return Arrays.stream(CardUse.values())
                .filter(u -> Words.US.say(u).equalsIgnoreCase(purpose.strip()))
                .findFirst()
                .orElseThrow(() -> new EarleafException(Problem.of(
                        "cards.text",
                        Said.text("--for"),
                        Said.text("\"" + purpose + "\""),
                        "list",
                        Arrays.stream(CardUse.values()).map(Words.US::say).collect(Collectors.joining(", ")))));
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
                use.map(u -> Words.here().say(r.verdict(u))));
    }

    private static void print(CardReading.Sizes s, PrintWriter out) {
        line(out, tell("cli.cards.middle"), tell("cli.cards.stain-um", "figure", figure(s.stain_um())));
        String drops = tell(
                "cli.cards.half-the-volume-below-um",
                "figure",
                figure(s.v50_um()),
                "figure2",
                figure(s.v10_um()),
                "figure3",
                figure(s.v90_um()));
        line(out, tell("cli.cards.drops"), drops);
        line(out, tell("cli.cards.deposit"), tell("cli.cards.ul-cm2-assumption", "figure", figure(s.deposit_ulCm2())));
    }

    private static void print(Read read, Optional<CardUse> use, PrintWriter out) {
        CardReading r = read.reading();
        out.println(read.file().getFileName());
        line(
                out,
                tell("cli.cards.covered"),
                tell("cli.cards.of-cm2", "figure", figure(r.cover() * 100), "figure2", figure(r.area_cm2())));
        line(
                out,
                tell("cli.cards.stains"),
                r.stains_cm2()
                        .map(n -> tell(
                                "cli.cards.cm2-counted-the-rest-lie",
                                "figure",
                                figure(n),
                                "figure2",
                                figure(r.counted_cm2())))
                        .orElse(tell("cli.cards.too-crowded-to-count")));
        r.sizes().ifPresent(s -> print(s, out));
        if (r.isCrowded()) {
            line(out, tell("cli.cards.note"), tell("cli.cards.more-than-a-fifth-is"));
        }
        if (r.scuffs() > 0) {
            line(out, tell("cli.cards.note"), tell("cli.cards.patches-are-scratched-or", "scuffs", r.scuffs()));
        }
        use.ifPresent(u -> line(
                out,
                tell("cli.cards.verdict"),
                tell(
                        "cli.cards.to-cm2",
                        "words",
                        Words.here().say(r.verdict(u)),
                        "words2",
                        Words.here().say(u),
                        "figure",
                        figure(u.least_cm2()),
                        "figure2",
                        figure(u.most_cm2()))));
        out.println();
    }

    private static String figure(double value) {
        return Figure.text(value, DIGITS);
    }

    private static void line(PrintWriter out, String word, String text) {
        out.printf("%-9s %s%n", word, text);
    }
}
