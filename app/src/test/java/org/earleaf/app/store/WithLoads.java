// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import static org.earleaf.app.store.Tanks.DAY;
import static org.earleaf.app.store.Tanks.T;

import java.nio.file.Path;
import org.earleaf.app.store.LoadStore.Kept;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A store with the farm of {@link Tanks}, its label and its loads. */
abstract class WithLoads {
    @TempDir
    Path folder;

    FarmStore store;
    LoadStore loads;

    @BeforeEach
    final void open() {
        store = FarmStore.create(folder.resolve("earleaf.db"));
        FarmStoreTest.put(store, Tanks.farm());
        loads = store.loads();
        loads.keep(Tanks.label());
    }

    @AfterEach
    final void close() {
        store.close();
    }

    final Kept planned(String id, String job, double flozAc) {
        return loads.add(Tanks.load(id, job, "highboy", flozAc, 1, 500));
    }

    final Kept reserved(String id, String job, double flozAc) {
        planned(id, job, flozAc);
        return loads.reserve(id, 1, "A", T);
    }

    final Kept mixed(String id) {
        Kept k = loads.mixing(id, loads.get(id).version(), Tanks.LOOKED, "A", T);
        k = loads.key(id, k.version(), 1, Tanks.key(k.load(), "A"));
        k = loads.key(id, k.version(), 1, Tanks.key(k.load(), "B"));
        return loads.mixed(id, k.version(), DAY, true, "A", T);
    }
}
