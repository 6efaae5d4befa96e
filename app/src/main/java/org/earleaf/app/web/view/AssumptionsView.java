// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.earleaf.app.words.Words.tell;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.text.Markup;
import org.earleaf.app.web.text.Say;
import org.earleaf.decide.Outlooks;
import org.earleaf.farm.Farm;
import org.earleaf.field.Zone;
import org.earleaf.pressure.ProtectionAssumption;
import org.earleaf.season.parameter.Parameter;
import org.earleaf.units.Flag;

/**
 * Everything that is assumed: the numbers of the season model, those of disease and insects, the prices in use, and
 * what was filled in or clamped in this farm's data.
 */
public record AssumptionsView(
        Markup headline,
        List<ParameterRow> season,
        List<ParameterRow> protection,
        List<WhyInputs.Input> settings,
        List<Remark> flagged) {

    /** What was filled in or taken, and where. */
    public record Remark(String where, String what) {}

    public static AssumptionsView of(FarmDay day, Format format) {
        List<Remark> flagged = flagged(day, format);
        long published = Arrays.stream(Parameter.values())
                .filter(p -> p.tag() == Parameter.Tag.PUBLISHED)
                .count();
        int all = Parameter.values().length;
        String data = flagged.isEmpty()
                ? tell("page.assumptions.nothing-in-this-farms-data")
                : tell("page.assumptions.what-was-filled-in-or", "n", flagged.size());
        return new AssumptionsView(
                new Say()
                        .sentence(tell(
                                "page.assumptions.the-model-rests-on-numbers",
                                "all",
                                all,
                                "published",
                                String.valueOf(published)))
                        .sentence(data)
                        .done(),
                Arrays.stream(Parameter.values()).map(ParameterRow::of).toList(),
                Arrays.stream(ProtectionAssumption.values())
                        .map(ParameterRow::of)
                        .toList(),
                settings(day, format),
                flagged);
    }

    private static List<WhyInputs.Input> settings(FarmDay day, Format format) {
        List<WhyInputs.Input> all = new ArrayList<>(SettingRows.of(day.farm(), format));
        all.add(new WhyInputs.Input(
                tell("page.assumptions.members-of-each-field"),
                Integer.toString(Outlooks.MEMBERS),
                tell("page.assumptions.fixed")));
        return all;
    }

    /** Said of the folder, of the weather and of each field, once. */
    private static List<Remark> flagged(FarmDay day, Format format) {
        Farm farm = day.farm();
        Stream<Flag> ofFields =
                farm.zones().stream().filter(Zone::isCorn).flatMap(z -> day.outlook(z).flags().stream());
        return Stream.of(farm.flags().stream(), farm.weather().flags().stream(), ofFields)
                .flatMap(s -> s)
                .distinct()
                .map(f -> new Remark(format.say(f.where()), Phrases.capital(format.say(f.what())) + "."))
                .toList();
    }
}
