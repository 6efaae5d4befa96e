// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.earleaf.app.store.FarmStore;
import org.earleaf.app.store.ImportReport;
import org.earleaf.exchange.FarmFolder;
import org.earleaf.farm.Farm;
import org.earleaf.weather.WeatherDay;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DemoFarmTest {
    private static final Path IN_REPOSITORY = Path.of(System.getProperty("earleaf.root", ".."), "demo-farm");

    @Test
    void the_farm_in_the_jar_is_the_farm_of_the_repository() throws Exception {
        List<Path> files;
        try (Stream<Path> list = Files.list(IN_REPOSITORY)) {
            files = list.filter(f -> f.toString().matches(".*\\.(csv|geojson)"))
                    .filter(f -> !f.endsWith("climate.csv"))
                    .toList();
        }
        assertThat(DemoFarm.FILES)
                .containsAll(files.stream().map(f -> f.getFileName().toString()).toList());
        Path kept;
        try (DemoFarm demo = DemoFarm.unpack()) {
            kept = demo.folder();
            for (Path file : files) {
                assertThat(demo.folder().resolve(file.getFileName().toString())).hasSameBinaryContentAs(file);
            }
        }
        assertThat(kept).doesNotExist();
    }

    @Test
    void the_store_gives_back_the_farm_that_its_folder_holds(@TempDir Path temp) {
        Farm farm = FarmFolder.read(IN_REPOSITORY);
        List<WeatherDay> written = FarmFolder.readWeather(IN_REPOSITORY).observed();
        Path file = temp.resolve("earleaf.db");
        try (FarmStore store = FarmStore.create(file)) {
            store.importFarm(farm, written);
        }
        try (FarmStore store = FarmStore.open(file)) {
            assertThat(store.farm()).isEqualTo(farm);
            ImportReport again = store.importFarm(farm, written);
            assertThat(again.differences()).isEmpty();
            assertThat(again.added().values()).containsOnly(0);
            assertThat(store.farm()).isEqualTo(farm);
        }
    }
}
