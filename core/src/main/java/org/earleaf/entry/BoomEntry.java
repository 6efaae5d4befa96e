// SPDX-License-Identifier: Apache-2.0
package org.earleaf.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.earleaf.rig.OutletGroup;
import org.earleaf.units.EarleafException;

/** What a person says of a boom: which outlets share the flow of a row, and how much each group is to get. */
public final class BoomEntry {
    private static final Pattern GROUP = Pattern.compile("(.+?)\\s+(\\S+)\\s*%\\s+(\\S+)");

    private BoomEntry() {}

    /** Groups parted by commas, each with its name, share and outlets a row: "top 40% 1.5, ear 60% 4". */
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
