// SPDX-License-Identifier: Apache-2.0
package org.earleaf.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.earleaf.farm.Rig;
import org.earleaf.field.Placement;
import org.earleaf.label.DropletClass;
import org.earleaf.rig.Liquid;
import org.earleaf.rig.NozzleModel;
import org.earleaf.rig.NozzleSize;
import org.earleaf.rig.OutletGroup;
import org.earleaf.rig.PassNeed;
import org.earleaf.rig.RigSetup;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Quantity;
import org.earleaf.units.Said;

/**
 * Finds the outlets, pressures and speeds that serve a pass, as a person words it on a page or to a command. Empty text
 * is "not told".
 *
 * @param rate finished liquid on the ground
 * @param speed to set for; empty: the usual one
 * @param liquid "water", "uan32" or a density
 * @param placement where it goes on
 * @param spacing nozzles apart
 * @param rows rows apart, for outlets by row
 * @param droplets "M to VC": classes that serve
 * @param nozzles makers' sheets, "NAME, 05: VC 20 psi, C 30 psi", parted by semicolons or lines
 */
public record SetupEntry(
        String rate,
        String speed,
        String liquid,
        String placement,
        String spacing,
        String rows,
        String droplets,
        String nozzles) {
    private static final double ROWS_M = 30 * .0254;
    private static final Pattern SHEET = Pattern.compile("(.+?),\\s*(?:size\\s*)?(\\d+)\\s*:\\s*(.+)");
    private static final Pattern GROUP = Pattern.compile("(.+?)\\s+(\\S+)\\s*%\\s+(\\S+)");
    private static final Pattern CLASS = Pattern.compile("(?i)([a-z]+)\\s+(?:at\\s+)?(.+)");

    public RigSetup.Answer on(Rig rig) {
        PassNeed need = new PassNeed(
                rig,
                Liquid.parse(liquid.isBlank() ? "water" : liquid, Said.of("where.liquid")),
                read(rate, Ranges.CARRIER, "rate", Double.NaN),
                read(rows, Ranges.ROWS, "rows", ROWS_M),
                place(rig),
                read(spacing, Ranges.OUTLET_WIDTH, "spacing", PassNeed.USUAL_NOZZLE_M),
                read(speed, Ranges.SPEED, "speed", Double.NaN),
                Double.NaN);
        if (Double.isNaN(need.rate_m3m2())) {
            throw EarleafException.coded("spray.rate-missing", "rate", "");
        }
        return droplets.isBlank() ? RigSetup.find(need) : RigSetup.find(need, wanted());
    }

    private Placement place(Rig rig) {
        if (placement.isBlank()) {
            boolean over = rig.placements().contains(Placement.OVER_THE_TOP);
            return over || rig.placements().isEmpty()
                    ? Placement.OVER_THE_TOP
                    : rig.placements().stream().sorted().findFirst().orElseThrow();
        }
        return placement(placement);
    }

    /** Where a product goes, by its word. */
    public static Placement placement(String word) {
        return Placement.findByWord(word.strip())
                .orElseThrow(() -> EarleafException.coded(
                        "placement.unknown",
                        "placement",
                        word,
                        "placements",
                        Stream.of(Placement.values()).map(Placement::word).toList()));
    }

    private RigSetup.Droplets wanted() {
        String[] ends = droplets.strip().split("(?i)\\s+to\\s+|\\s*-\\s*", 2);
        DropletClass finest = droplet(ends[0]);
        DropletClass coarsest = ends.length > 1 ? droplet(ends[1]) : finest;
        List<NozzleModel> models = models();
        if (models.isEmpty()) {
            throw EarleafException.coded("droplets.no-nozzle", "droplets", "");
        }
        return new RigSetup.Droplets(finest, coarsest, models);
    }

    /** A class of droplets, by its letters. */
    public static DropletClass droplet(String word) {
        return DropletClass.find(word.strip())
                .orElseThrow(() -> EarleafException.coded(
                        "droplets.unknown",
                        "droplets",
                        word.strip(),
                        "classes",
                        String.join(" ", DropletClass.letters())));
    }

    private List<NozzleModel> models() {
        List<NozzleModel> all = new ArrayList<>();
        for (String sheet : nozzles.split("[;\\n]")) {
            if (!sheet.isBlank()) {
                all.add(model(sheet.strip()));
            }
        }
        return all;
    }

    private static NozzleModel model(String sheet) {
        Matcher m = SHEET.matcher(sheet);
        if (!m.matches()) {
            throw unreadable(sheet);
        }
        TreeMap<Double, DropletClass> classes = new TreeMap<>();
        for (String at : m.group(3).split(",")) {
            Matcher c = CLASS.matcher(at.strip());
            if (!c.matches()) {
                throw unreadable(sheet);
            }
            double pressure_Pa = Ranges.OUTLET_PRESSURE.read(c.group(2), "nozzle " + m.group(1));
            classes.put(pressure_Pa, droplet(c.group(1).toUpperCase(Locale.ROOT)));
        }
        return new NozzleModel(
                m.group(1).strip(),
                NozzleSize.parse(
                        m.group(2), Said.of("where.nozzle", "name", m.group(1).strip())),
                classes);
    }

    private static EarleafException unreadable(String sheet) {
        return EarleafException.coded("nozzle.sheet-unreadable", "nozzle", sheet);
    }

    private static double read(String said, Allowed allowed, String where, double otherwise) {
        return said.isBlank() ? otherwise : allowed.read(said.strip(), where);
    }

    /** Ends of a range, as "15 to 60 psi"; the first may go without its unit. */
    public static double[] range(String said, Allowed allowed, String where) {
        String[] ends = said.strip().split("(?i)\\s+to\\s+", 2);
        Optional<String[]> last = ends.length < 2 ? Optional.empty() : Quantity.split(ends[1], where);
        if (last.isEmpty()) {
            throw EarleafException.coded("range.unreadable", where, said);
        }
        double low = allowed.read(ends[0], last.get()[1], where);
        double high = allowed.read(ends[1], where);
        if (low > high) {
            throw EarleafException.coded("range.turned", where, said);
        }
        return new double[] {low, high};
    }

    /** The farm's rig of that name. */
    public static Rig rig(List<Rig> rigs, String name) {
        Optional<Rig> found = rigs.stream()
                .filter(r -> r.name().equalsIgnoreCase(name.strip()))
                .findFirst();
        return found.orElseThrow(() -> EarleafException.coded(
                "rig.unknown", "rig", name, "rigs", rigs.stream().map(Rig::name).toList()));
    }

    /** Outlets that share the flow of a row, by groups, each with its name, share and outlets a row: "top 40% 1.5, ear 60% 4". */
    public static List<OutletGroup> groups(String text, String where) {
        List<OutletGroup> groups = new ArrayList<>();
        for (String one : text.split(",")) {
            String said = one.strip();
            Matcher m = GROUP.matcher(said);
            if (!m.matches()) {
                throw EarleafException.coded("split.unreadable", where, said);
            }
            groups.add(new OutletGroup(
                    m.group(1),
                    Ranges.GROUP_OUTLETS.read(m.group(3), where),
                    Ranges.GROUP_SHARE.read(m.group(2) + " %", where)));
        }
        return groups;
    }
}
