// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

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
                ? "Nothing in this farm’s data was filled in."
                : Words.capital(Words.count(flagged.size(), "remark")) + (flagged.size() == 1 ? " says" : " say")
                        + " what was filled in or assumed in this farm’s data.";
        return new AssumptionsView(
                new Say()
                        .sentence("The model rests on " + all + " numbers; " + published + " of them are published.")
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
        all.add(new WhyInputs.Input("Members of each field", Integer.toString(Outlooks.MEMBERS), "Fixed"));
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
                .map(f -> new Remark(format.say(f.where()), Words.capital(format.say(f.what())) + "."))
                .toList();
    }
}
