// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import static org.earleaf.app.words.Words.tell;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import org.earleaf.entry.Days;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** The options that every command takes; mix in with {@code @Mixin Common common = new Common();}. */
public final class Common {
    /** Units of what is printed; inputs name their own unit. */
    public enum UnitSystem {
        US,
        METRIC
    }

    @Option(names = "--farm", paramLabel = "FILE", descriptionKey = "cli.common.option.farm")
    private Path farm = Path.of("earleaf.db");

    @Option(names = "--folder", paramLabel = "DIR", descriptionKey = "cli.common.option.folder")
    private @Nullable Path folder;

    @Option(
            names = "--on",
            paramLabel = "YYYY-MM-DD",
            converter = DateConverter.class,
            descriptionKey = "cli.common.option.on")
    private @Nullable LocalDate on;

    @Option(
            names = "--units",
            paramLabel = "us|metric",
            converter = UnitSystemConverter.class,
            descriptionKey = "cli.common.option.units")
    private UnitSystem units = UnitSystem.US;

    @Option(names = "--json", descriptionKey = "cli.common.option.json")
    private boolean json;

    public Path farm() {
        return farm;
    }

    public Optional<Path> findFolder() {
        return Optional.ofNullable(folder);
    }

    /** The day given with {@code --on}. */
    public Optional<LocalDate> findOn() {
        return Optional.ofNullable(on);
    }

    /** The day given with {@code --on}, else today. */
    public LocalDate on() {
        return findOn().orElseGet(LocalDate::now);
    }

    public boolean isMetric() {
        return units == UnitSystem.METRIC;
    }

    public boolean isJson() {
        return json;
    }

    /** A day as every door reads it; of what is looked at in hindsight too, hence of any weather. */
    static final class DateConverter implements ITypeConverter<LocalDate> {
        @Override
        public LocalDate convert(String text) {
            return Days.ofWeather(text, "--on");
        }
    }

    /** Reads a unit system without regard to case. */
    static final class UnitSystemConverter implements ITypeConverter<UnitSystem> {
        @Override
        public UnitSystem convert(String text) {
            return switch (text.trim().toLowerCase(Locale.ROOT)) {
                case "us" -> UnitSystem.US;
                case "metric" -> UnitSystem.METRIC;
                default ->
                    throw new TypeConversionException(tell("cli.common.found-expected-us-or-metric", "text", text));
            };
        }
    }
}
