// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.desk;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import org.earleaf.exchange.FarmFolder;
import org.earleaf.exchange.FolderWeather;
import org.earleaf.farm.Farm;

/** What doors are built with: who reads a folder, who answers for a day, and which clock goes. */
public record Wiring(FolderReader folders, DayMaker days, Clock clock) {
    /** Reads a farm folder; refuses it with every problem found. */
    public interface FolderReader {
        Farm farm(Path folder);

        /** Its weather files alone, as written, holes and all. */
        FolderWeather weather(Path folder);
    }

    /** The wiring of the running program: folders by exchange, answers by core, the system's clock. */
    public static Wiring live() {
        FolderReader folders = new FolderReader() {
            @Override
            public Farm farm(Path folder) {
                return FarmFolder.read(folder);
            }

            @Override
            public FolderWeather weather(Path folder) {
                return FarmFolder.readWeather(folder);
            }
        };
        Threads threads = Threads.ofMachine();
        DayMaker days = (farm, on, hindsight) ->
                new AskedDay(farm, on, new CoreWork(farm, on, hindsight, threads.inAnswers()), threads);
        return new Wiring(folders, days, Clock.systemUTC());
    }

    public FarmDay day(Farm farm, LocalDate on, boolean hindsight) {
        return days.day(farm, on, hindsight);
    }

    /** Today where the farm stands. */
    public LocalDate today(Farm farm) {
        return LocalDate.now(clock.withZone(farm.timeZone()));
    }
}
