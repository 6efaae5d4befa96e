// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.file.Path;
import java.util.Map;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every file of the folder, broken by hand in one way at a time. */
class FaultsTest {
    private static final String PACKAGE = "org.earleaf.exchange.";

    @TempDir
    private Path dir;

    @ParameterizedTest
    @MethodSource({
        PACKAGE + "FarmFaults#farm",
        PACKAGE + "FarmFaults#fields",
        PACKAGE + "FarmFaults#soil",
        PACKAGE + "WeatherFaults#weather",
        PACKAGE + "WeatherFaults#station",
        PACKAGE + "WorkFaults#passes",
        PACKAGE + "WorkFaults#readings",
        PACKAGE + "WorkFaults#given",
        PACKAGE + "WorkFaults#past",
        PACKAGE + "ShedFaults#boundaries",
        PACKAGE + "ShedFaults#shed",
        PACKAGE + "ProtectionFaults#disease",
        PACKAGE + "LabelFaults#labels",
        PACKAGE + "ProtectionFaults#counts",
        PACKAGE + "ProtectionFaults#rigs"
    })
    void every_fault_is_refused_and_told_with_its_place(Fault fault) {
        Path folder = fault.breaking().apply(TinyFolder.us()).write(dir);
        EarleafException thrown = catchThrowableOfType(EarleafException.class, () -> FarmFolder.read(folder));
        assertThat(thrown).as("nothing was refused").isNotNull();
        Problem problem = thrown.problems().get(0);
        assertThat(PlaceText.of(problem.place())).isEqualTo(fault.where());
        assertThat(told(problem)).contains(fault.parts());
        assertThat(problem.todo()).isNotBlank();
        assertThat(thrown.problems()).as("problems").hasSize(fault.problems());
    }

    /** Code, place, what was found and every value of a problem; of a range its ends. */
    static String told(Problem problem) {
        Map<String, Object> values = problem.rule().values();
        String seen = String.valueOf(problem.seen().values().get("text"));
        String high = String.valueOf(values.get("high"));
        String unit = high.contains(" ") ? high.substring(high.indexOf(' ')) : "";
        String range = String.valueOf(values.get("low")).replace(unit, "") + " to " + high;
        return String.join("; ", problem.sentence(), values.toString(), "\"" + seen + "\"", range);
    }
}
