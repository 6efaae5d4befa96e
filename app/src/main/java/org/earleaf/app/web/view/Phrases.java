// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.earleaf.app.words.Words.tell;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.text.Markup;
import org.earleaf.app.web.text.Say;
import org.earleaf.app.words.Dates;
import org.earleaf.app.words.Words;
import org.earleaf.decide.Option;
import org.earleaf.decide.SprayMix;
import org.earleaf.farm.RateUnit;
import org.earleaf.field.Placement;
import org.earleaf.outlook.DateSpread;
import org.earleaf.outlook.Outlook;
import org.earleaf.season.SeasonTrace.Daily;
import org.earleaf.units.Measure;

/** Phrases that several pages share. */
public final class Phrases {
    private Phrases() {}

    /** A phrase as the start of a sentence. */
    public static String capital(String phrase) {
        return phrase.isEmpty() ? phrase : phrase.substring(0, 1).toUpperCase(Locale.US) + phrase.substring(1);
    }

    /** Where a pass puts it, as part of a sentence. */
    static String where(Placement placement) {
        return Words.here().say(placement, "where");
    }

    /** "Sun, July 5 (July 2 to 9)" or what stands for never. */
    static Markup shortDate(DateSpread dates) {
        Optional<LocalDate> likely = dates.p50();
        if (likely.isPresent()) {
            Say say = new Say().text(Dates.brief(likely.get()));
            return dates.p10().equals(dates.p90())
                    ? say.done()
                    : say.range("(" + Dates.range(dates) + ")").done();
        }
        return Markup.text(
                dates.probability() <= 0
                        ? tell("dates.never")
                        : tell("page.phrases.in-futures", "chance", Measure.CHANCE.of(dates.probability())));
    }

    static boolean isRipe(Outlook o) {
        return o.maturity().filter(m -> !m.isAfter(o.on())).isPresent();
    }

    /** "V10 to V12", the least and the most advanced corn; empty when none stands. */
    static Optional<String> stages(List<Outlook> outlooks) {
        List<Outlook> standing = outlooks.stream()
                .filter(o -> o.leafCollars() > 0)
                .sorted((a, b) -> Double.compare(advance(a), advance(b)))
                .toList();
        if (standing.isEmpty()) {
            return Optional.empty();
        }
        String first = Words.here().say(standing.get(0).stage());
        String last = Words.here().say(standing.get(standing.size() - 1).stage());
        return Optional.of(first.equals(last) ? first : tell("page.phrases.to", "first", first, "last", last));
    }

    private static double advance(Outlook o) {
        return o.leafCollars() + 100 * o.trace().at(o.today(), Daily.REP);
    }

    /** "40 lb N/ac"; of a spray what it is against. */
    static Markup rate(Option option, Format format) {
        if (!option.isNitrogen()) {
            return new Say().strong(capital(format.say(option.kind()))).done();
        }
        return new Say()
                .strong(format.nitrogen(option.nitrogen_kgHa()))
                .unit(format.nitrogenUnit())
                .done();
    }

    /** "Demo F1 10 fl oz/ac, Demo Spreader 0.25 % v/v in 15 gal/ac". */
    static String mix(SprayMix mix, Format format) {
        String parts = mix.parts().stream()
                .map(p -> p.product().name() + " " + amount(p, format))
                .collect(Collectors.joining(", "));
        double carrier = mix.carrier_LHa();
        return Double.isNaN(carrier)
                ? parts
                : tell(
                        "page.phrases.in",
                        "parts",
                        parts,
                        "product",
                        format.product(carrier, true),
                        "productUnit",
                        format.productUnit(true));
    }

    /** As the recipe has it; in metric units L/ha or kg/ha. */
    private static String amount(SprayMix.Part p, Format format) {
        boolean asEntered = !format.isMetric() || p.unit() == RateUnit.PERCENT_VV;
        String unit = asEntered ? p.unit().word() : p.unit().isVolume() ? "L/ha" : "kg/ha";
        String number = Format.number(asEntered ? p.rate() : p.unit().inside(p.rate()), 2);
        return (number.contains(".") ? number.replaceAll("[.]?0+$", "") : number) + " " + unit;
    }

    /** "40 lb at the row base, highboy". */
    static String choice(Option o, Format format) {
        if (!o.isNitrogen()) {
            return o.product() + " " + where(o.placement()) + ", "
                    + Words.here().rig(o.rig());
        }
        return format.nitrogen(o.nitrogen_kgHa()) + " " + format.massUnit() + " " + where(o.placement()) + ", "
                + Words.here().rig(o.rig());
    }

    /** "UAN 32, 11.3 gal/ac". */
    static Markup product(Option o, Format format) {
        if (o.spray().isPresent()) {
            return Markup.text(mix(o.spray().get().mix(), format));
        }
        return new Say()
                .text(o.product() + ", " + format.product(o.productRate(), o.liquid()))
                .unit(format.productUnit(o.liquid()))
                .done();
    }
}
