// SPDX-License-Identifier: Apache-2.0
package org.earleaf.weather;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Places and their zones; longitudes of well-known towns from memory. */
class SunTimeTest {
    @ParameterizedTest
    @CsvSource({
        "-93.6, America/Chicago", // Ames, Iowa
        "-104.8, America/Denver",
        "-100.8, America/Chicago", // western Nebraska's edge
        "-87.3, America/Indiana/Indianapolis",
        "-3.7, Europe/Madrid",
        "76.0, Asia/Shanghai", // Kashgar, the widest
        "177.4, Pacific/Auckland",
        "-176.5, Pacific/Chatham", // round the date line
    })
    void a_real_place_goes_with_its_zone(double longitude_deg, String zone) {
        assertThat(SunTime.findProblem(longitude_deg, ZoneId.of(zone))).isEmpty();
    }

    @Test
    void a_forgotten_minus_sign_is_told_with_where_the_zone_lies() {
        assertThat(SunTime.findProblem(93.6, ZoneId.of("America/Chicago"))).hasValueSatisfying(p -> {
            assertThat(p.code()).isEqualTo("farm.longitude-not-of-zone");
            assertThat(p.rule().values())
                    .containsEntry("zone", "America/Chicago")
                    .containsEntry("about", "-90");
        });
    }
}
