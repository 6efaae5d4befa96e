// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.earleaf.app.RecordCopy;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.web.Fixture;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.view.FieldLeaf;
import org.earleaf.app.web.view.OptionsView;
import org.earleaf.decide.NitrogenOptions;
import org.earleaf.field.Zone;
import org.earleaf.outlook.EnoughNitrate;
import org.earleaf.outlook.Tested;
import org.junit.jupiter.api.Test;

/** Where a soil test shows that nothing is needed, no page and no command offers a pass of itself. */
class EnoughNitrateToldTest {
    private static final class Enough extends Fixture {
        @Override
        public NitrogenOptions.Answer answer(Zone zone) {
            EnoughNitrate test = new EnoughNitrate(on().minusDays(3), 28, 25);
            return RecordCopy.with(super.answer(zone), "tested", new Tested(List.of(), Optional.of(test)));
        }
    }

    private static Zone bottom(FarmDay day) {
        return day.farm().zones().stream()
                .filter(z -> z.field().equals("Creek Bottom"))
                .findFirst()
                .orElseThrow();
    }

    private static OptionsView options(FarmDay day) {
        return OptionsView.of(day, bottom(day), Format.US);
    }

    private static String pass(FarmDay day) {
        return FieldLeaf.of(day, bottom(day), day.on(), false, Format.US)
                .shown()
                .pass();
    }

    @Test
    void pages_offer_no_pass_but_keep_what_each_is_worth() {
        assertThat(options(new Fixture()).advice().go()).isNotEmpty();
        assertThat(options(new Enough()).advice().go()).isEmpty();
        assertThat(options(new Enough()).every().rows()).isNotEmpty();
        assertThat(pass(new Fixture())).isNotEmpty();
        assertThat(pass(new Enough())).isEmpty();
    }

    @Test
    void the_command_says_so_in_place_of_the_best_pass() {
        assertThat(text(new Fixture())).contains("Best: 70 lb N/ac").doesNotContain("28.0 ppm");
        assertThat(text(new Enough())).contains("28.0 ppm").doesNotContain("Best: 70");
    }

    private static String text(FarmDay day) {
        return OptionsText.of(bottom(day), day.on(), day.answer(bottom(day)), false);
    }
}
