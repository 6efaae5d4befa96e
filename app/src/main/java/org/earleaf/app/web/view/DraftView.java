// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.earleaf.app.words.Words.tell;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.earleaf.app.words.Words;
import org.earleaf.farm.Farm;
import org.earleaf.farm.Recipe;
import org.earleaf.farm.Rig;
import org.earleaf.field.Zone;
import org.earleaf.label.CropStages;
import org.earleaf.label.DropletClass;
import org.earleaf.load.LoadDraft;
import org.earleaf.mix.MixLine;
import org.earleaf.units.EarleafException;

/**
 * The forms of a load that is still to be made.
 *
 * @param action address that the form goes to; empty while recipe, field or rig are still to be chosen
 * @param stages that the crop can have
 * @param labelled whether a pesticide label is in the recipe, so that more is asked
 */
public record DraftView(String action, Offered offered, Chosen chosen, String stages, boolean labelled) {
    /** What a load can be made of. */
    public record Offered(
            List<String> recipes,
            Map<String, String> places,
            List<String> rigs,
            Map<String, String> placements,
            Map<String, String> droplets) {}

    /**
     * What is chosen already; empty where nothing is.
     *
     * @param name of the field at the place
     */
    public record Chosen(String recipe, String place, String rig, String name) {}

    public static DraftView blank(Farm farm) {
        return of(farm, "", "", "", "");
    }

    public static DraftView of(Farm farm, String action, String recipe, String place, String rig) {
        String crop = Places.of(farm).find(place).map(Zone::crop).orElse("corn");
        return new DraftView(
                action,
                offered(farm, rig),
                new Chosen(
                        recipe,
                        place,
                        rig,
                        Places.of(farm).find(place).map(Zone::label).orElse("")),
                Words.here().say("label.example.stage", "stages", CropStages.said(crop)),
                isLabelled(farm, recipe));
    }

    private static Offered offered(Farm farm, String rig) {
        Map<String, String> places = new LinkedHashMap<>();
        Places.of(farm).all().forEach((key, zone) -> places.put(key, zone.label()));
        Map<String, String> droplets = new LinkedHashMap<>();
        Arrays.stream(DropletClass.values())
                .forEach(c ->
                        droplets.put(c.name(), c.name() + ", " + Words.here().say(c)));
        List<Rig> rigs = farm.rigs().stream()
                .filter(r -> !r.isTender() && r.tank_m3() > 0)
                .toList();
        Map<String, String> placements = new LinkedHashMap<>();
        rigs.stream()
                .filter(r -> rig.isEmpty() || r.name().equals(rig))
                .flatMap(r -> r.placements().stream())
                .sorted()
                .forEach(p -> placements.put(p.word(), Words.here().say(p)));
        return new Offered(
                farm.shelf().recipes().stream().map(Recipe::name).toList(),
                places,
                rigs.stream().map(Rig::name).toList(),
                placements,
                droplets);
    }

    public boolean isChange() {
        return action.endsWith("edit");
    }

    public String title() {
        return isChange() ? tell("page.draft.change-a-load") : tell("page.draft.a-new-load");
    }

    /** The same with what is chosen already. */
    public DraftView chosen(String theRecipe, String thePlace, String theRig) {
        return new DraftView(action, offered, new Chosen(theRecipe, thePlace, theRig, chosen.name()), stages, labelled);
    }

    private static boolean isLabelled(Farm farm, String recipe) {
        try {
            return farm.shelf().recipes().stream()
                    .filter(r -> r.name().equals(recipe))
                    .flatMap(r -> LoadDraft.lines(farm, r).stream())
                    .anyMatch(MixLine::isLabelled);
        } catch (EarleafException unreadable) {
            return true;
        }
    }
}
