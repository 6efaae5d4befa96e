// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class GuardTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "127.0.0.1",
                "192.168.1.20",
                "[::1]",
                "[fe80::1]",
                "localhost",
                "barn",
                "barn.local",
                "BARN.Local"
            })
    void an_address_or_a_name_of_the_local_network_is_here(String host) {
        assertThat(Guard.isNamedAsHere(host)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "bad.cafe",
                "decade.de",
                "fade.dad",
                "farm.example",
                "local.example",
                "1.2.3.4.example",
                "1.2.3",
                "256.1.1.1",
                "1.2.3.4.5",
                "01.2.3.4",
                "1234.5",
                "dead:beef",
                "abc::1",
                "...",
                "."
            })
    void a_name_of_the_wide_net_is_not_here_though_it_be_written_in_hex_letters_and_dots(String host) {
        assertThat(Guard.isNamedAsHere(host)).isFalse();
    }
}
