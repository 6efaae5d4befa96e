// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.earleaf.farm.Product;
import org.earleaf.farm.Rig;
import org.earleaf.field.Pass;
import org.earleaf.label.LabelBook;
import org.earleaf.mix.JarResult;

/**
 * What is kept of loads, as {@link LoadRules} asks for it. All that is asked and written for one step is one state of
 * things: nobody else writes in between.
 */
public interface LoadLedger {
    LabelBook labels();

    List<Rig> rigs();

    List<Product> products();

    /** Every pass that no load made; those are counted with the loads. */
    List<Pass> passes();

    List<TankLoad> onField(String field);

    /** Every load of a rig. */
    List<TankLoad> ofRig(String rig);

    /** What is free of every lot. */
    List<LotStock> free();

    /** What a load holds of the lots. */
    List<LotStock.Draw> drawn(String load);

    void draw(String load, List<LotStock.Draw> draws);

    /** Gives back to the lots all that a load holds. */
    void giveBack(String load);

    /** The newest jar test of a load's mix in its strengths. */
    Optional<JarResult> findJar(TankLoad load);

    /** Whether a rig was cleaned out at a time or later. */
    boolean isCleaned(String rig, Instant since);
}
