// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.earleaf.app.web.view.WhyInputs.Kind.CHOICE;
import static org.earleaf.app.web.view.WhyInputs.Kind.GROUND;
import static org.earleaf.app.web.view.WhyInputs.Kind.PASSES;
import static org.earleaf.app.web.view.WhyInputs.Kind.PRICES;
import static org.earleaf.app.web.view.WhyInputs.Kind.READINGS;
import static org.earleaf.app.web.view.WhyInputs.Kind.RIGS;
import static org.earleaf.app.web.view.WhyInputs.Kind.STATE;
import static org.earleaf.app.web.view.WhyInputs.Kind.WEATHER;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.earleaf.decide.Option;
import org.earleaf.season.parameter.Parameter;

/**
 * Every kind of figure that pages show, with what is behind it: what goes in, the equations (by the part of the code
 * they stand above) and the numbers assumed (by their place in the list). Formulas and sources are not repeated here.
 */
public enum Figure {
    WORTH(
            "Worth",
            "The mean, over all futures, of the money a pass brings in less what it costs, against doing nothing in the"
                    + " same futures. In brackets: one in ten futures stays below the first figure, nine in ten below"
                    + " the second.",
            List.of(CHOICE, PRICES),
            List.of("NitrogenOptions", "Recourse", "Informed", "RigLoss"),
            List.of()),
    CHANCE(
            "Pays in",
            "The share of futures in which the pass brings in more than it costs, in tenths.",
            List.of(CHOICE, PRICES),
            List.of("NitrogenOptions"),
            List.of()),
    BAD_CASE(
            "Bad case",
            "The mean gain of the worst fifth of futures.",
            List.of(CHOICE, PRICES),
            List.of("NitrogenOptions", "Choice"),
            List.of()),
    BREAK_EVEN(
            "Pays if corn is above",
            "The price of corn at which the mean gain is nothing, all else as it is: what must be earned back, spread"
                    + " over the bushels gained, and what each bushel costs to bring home.",
            List.of(CHOICE, PRICES),
            List.of("NitrogenOptions"),
            List.of()),
    WAIT(
            "A day’s wait",
            "What the best pass of its day is worth, less what waiting for the days after may still bring, weighed by"
                    + " the chance that they can be worked and by losing reach.",
            List.of(CHOICE, PRICES, WEATHER),
            List.of("Waiting", "WorkableDays", "Informed"),
            List.of()),
    CHOICE_MADE(
            "The choice",
            "Day, placement, rate, product and rig: all that can be done are run through the same futures; of the day"
                    + " to go the best stands here, by its mean gain unless the farm weighs the bad case too. The"
                    + " amount of product follows from the nitrogen in it. The reasons are read off the same runs.",
            List.of(CHOICE, PRICES, STATE, READINGS),
            List.of("NitrogenOptions", "Choice", "Recourse", "Waiting", "Reach", "OverTheTop"),
            List.of(Parameter.STEMFLOW, Parameter.WASH_IN, Parameter.AMMONIA_LOSS)),
    SHORT(
            "Short of nitrogen",
            "The first day on which growth is held back by nitrogen if nothing more is done: the middle of all futures,"
                    + " in brackets one in ten and nine in ten. Never counts as later than any date.",
            List.of(STATE, PASSES, READINGS, WEATHER, GROUND),
            List.of("CropNitrogen", "Assimilation", "SoilNitrogen", "ParameterDraws", "ForecastError"),
            List.of(
                    Parameter.LUXURY,
                    Parameter.UPTAKE_MAX,
                    Parameter.NITRATE_UPTAKE,
                    Parameter.MINERALISATION,
                    Parameter.DENITRIFICATION,
                    Parameter.START_NITRATE)),
    CROP_NITROGEN(
            "Nitrogen in the crop",
            "What the crop holds as a share of what it needs to grow unhindered, what it asks for in a day and what"
                    + " its roots can get.",
            List.of(STATE, PASSES, READINGS, GROUND),
            List.of("CropNitrogen", "Roots"),
            List.of(
                    Parameter.LUXURY,
                    Parameter.ROOT_NITROGEN,
                    Parameter.UPTAKE_MAX,
                    Parameter.NITRATE_UPTAKE,
                    Parameter.AMMONIUM_UPTAKE)),
    SOIL(
            "Nitrogen and water in the soil",
            "Nitrate, ammonium, urea and water in six layers, at the row and between the rows, as the daily model has"
                    + " them: the mean of the members, each corrected by the readings.",
            List.of(STATE, PASSES, READINGS, WEATHER, GROUND),
            List.of("SoilNitrogen", "SurfaceNitrogen", "Residue", "SoilWaterFlow", "SoilWater", "Rainfall", "Roots"),
            List.of(
                    Parameter.MINERALISATION,
                    Parameter.NITRIFICATION,
                    Parameter.DENITRIFICATION,
                    Parameter.WASH_IN,
                    Parameter.SOLUTE_MIXED,
                    Parameter.STEMFLOW,
                    Parameter.LATERAL)),
    LEDGER(
            "What has come and gone",
            "Sums since the run began, of the mean of the members; they add up to what lies in the soil.",
            List.of(PASSES, READINGS, WEATHER),
            List.of("SoilNitrogen", "SurfaceNitrogen", "Residue", "SoilWaterFlow", "CropNitrogen"),
            List.of(
                    Parameter.MINERALISATION,
                    Parameter.TAKE_BACK,
                    Parameter.RESIDUE_REACH,
                    Parameter.DENITRIFICATION,
                    Parameter.AMMONIA_LOSS,
                    Parameter.DEPOSIT_NITRATE,
                    Parameter.DEPOSIT_AMMONIUM)),
    YIELD(
            "Yield",
            "Grain at trade moisture when the run ends: the middle of all futures, in brackets one in ten and nine in"
                    + " ten; and what binds it in most of them.",
            List.of(STATE, PASSES, READINGS, WEATHER, GROUND),
            List.of("Growth", "CropNitrogen", "Evapotranspiration", "Phenology"),
            List.of(
                    Parameter.RUE,
                    Parameter.KERNELS,
                    Parameter.KERNEL_WEIGHT,
                    Parameter.HARVEST_INDEX,
                    Parameter.NITROGEN_HARVEST,
                    Parameter.GRAIN_N_MIN)),
    STAGE(
            "Stage and height",
            "Leaf collars and height by thermal time since planting, corrected by the stages and heights that were"
                    + " read; silk and ripe corn likewise.",
            List.of(STATE, READINGS, WEATHER, GROUND),
            List.of("Phenology", "Assimilation"),
            List.of(
                    Parameter.EMERGENCE,
                    Parameter.LEAF_EARLY,
                    Parameter.LEAF_LATE,
                    Parameter.SILK_SHIFT,
                    Parameter.HEIGHT_SCALE)),
    REACH(
            "Until when a rig fits",
            "The last day before the height that nine in ten futures stay below, with a margin on it, is more than the"
                    + " rig clears.",
            List.of(RIGS, STATE, READINGS),
            List.of("Reach", "Phenology"),
            List.of(Parameter.HEIGHT_SCALE, Parameter.LEAF_LATE)),
    WEATHER_AHEAD(
            "Weather",
            "As observed and as issued in the forecast; each member has its own error of the forecast, and after it"
                    + " the weather of a past year like this one.",
            List.of(WEATHER),
            List.of("ForecastError", "YearLikeness", "WeatherGenerator"),
            List.of(Parameter.RAIN_CATCH)),
    SPRAY(
            "Against disease and insects",
            "What was scouted, the hybrid, the ground and the weather say how much disease or how many aphids are to be"
                    + " expected; published trials say what a pass then saves. Its worth is told over the same futures"
                    + " of yield as that of nitrogen.",
            List.of(CHOICE, PRICES, READINGS, WEATHER),
            List.of(
                    "ProtectionWorth",
                    "FungicideResponse",
                    "SeverityGrowth",
                    "SeverityLoss",
                    "SiteScore",
                    "InfectionConditions",
                    "TarSpotModel",
                    "AphidModel",
                    "RigLoss",
                    "ScoutingValue"),
            List.of()),
    SPRAY_HOURS(
            "Spray hours",
            "Each hour of the forecast is as good as the worst of its factors: wind, gusts, inversion, heat, damp,"
                    + " leaves, rain. What the label says comes first; what it says and was not entered shuts the hour.",
            List.of(WEATHER),
            List.of(
                    "SprayHours",
                    "SprayBands",
                    "Inversion",
                    "BoomWind.overCrop_ms",
                    "WetBulb",
                    "LeafWetness",
                    "Rainfast"),
            List.of()),
    READING(
            "Worth of a reading",
            "How much better the choice of today would be, on average, with the answer in hand.",
            List.of(STATE, READINGS, PRICES),
            List.of("ReadingValue", "ScoutingValue", "Assimilation"),
            List.of()),
    WORKABLE(
            "Workable days",
            "The chance that a day can be worked, by the rain of that day and of the two before it.",
            List.of(WEATHER),
            List.of("WorkableDays"),
            List.of()),
    ENTERED(
            "Facts of the field",
            "As entered by you; the name of the soil follows from its sand and clay.",
            List.of(GROUND, RIGS, PRICES),
            List.of("SoilWater"),
            List.of()),
    REMAINDER(
            "What the run cannot account for",
            "Water and nitrogen that came in, less what went out and what is there: the largest of all members. It"
                    + " should be nothing but rounding.",
            List.of(PASSES, WEATHER),
            List.of("SoilWaterFlow", "SoilNitrogen"),
            List.of()),
    RUNS(
            "Seasons simulated",
            "Each choice is run through every member of a field from its day to the end of the season; the runs are"
                    + " counted.",
            List.of(WEATHER),
            List.of("ParameterDraws", "NitrogenOptions"),
            List.of());

    private final String title;
    private final String says;
    private final List<WhyInputs.Kind> inputs;
    private final List<String> equations;
    private final List<Parameter> assumed;

    Figure(String title, String says, List<WhyInputs.Kind> inputs, List<String> equations, List<Parameter> assumed) {
        this.title = title;
        this.says = says;
        this.inputs = inputs;
        this.equations = equations;
        this.assumed = assumed;
    }

    /** How an address names it: "bad-case". */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public static Optional<Figure> find(String key) {
        return Arrays.stream(values()).filter(f -> f.key().equals(key)).findFirst();
    }

    /** Its address; of a field and a choice where they are not empty. */
    public String link(String place, String choice) {
        String ofPlace = place.isEmpty() ? "" : "?place=" + place;
        return "/why/" + key() + ofPlace + (place.isEmpty() || choice.isEmpty() ? "" : "&choice=" + choice);
    }

    public String title() {
        return title;
    }

    public String says() {
        return says;
    }

    List<WhyInputs.Kind> inputs() {
        return inputs;
    }

    /** What stands behind it for a choice: a spray has its own. */
    Figure behind(Optional<Option> choice) {
        return isOfChoice() && choice.filter(o -> !o.isNitrogen()).isPresent() ? SPRAY : this;
    }

    List<Equation> equations() {
        return equations.stream().map(Equation::of).toList();
    }

    List<Parameter> assumed() {
        return assumed;
    }

    /** Whether it belongs to a choice, and not to the field alone. */
    boolean isOfChoice() {
        return inputs.contains(CHOICE);
    }
}
