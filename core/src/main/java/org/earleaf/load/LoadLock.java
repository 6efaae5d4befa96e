// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import java.util.StringJoiner;
import org.earleaf.units.Sha256;

/** What a load is locked to (rig, volume, rate, ground, crop, stage, products), as one fingerprint. */
final class LoadLock {
    private LoadLock() {}

    static String of(TankLoad load) {
        StringJoiner text = new StringJoiner("\n", "", "\n");
        text.add(load.rig()).add(line(load.volume_m3(), load.unapplied_m3())).add(line(load.rate_m3m2()));
        load.grounds().forEach(g -> text.add(line(g.field(), g.zone(), g.crop(), g.stage(), g.area_ha())));
        load.lines()
                .forEach(l -> text.add(
                        line(l.order(), l.product(), l.perHa(), l.planned().inside())));
        return Sha256.hex(text.toString());
    }

    private static String line(Object... parts) {
        StringJoiner line = new StringJoiner("|");
        for (Object part : parts) {
            line.add(String.valueOf(part));
        }
        return line.toString();
    }
}
