// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.earleaf.farm.Farm;
import org.earleaf.farm.Prices;
import org.earleaf.farm.Stock;
import org.earleaf.units.RecordCopy;
import org.junit.jupiter.api.Test;

/** Which liquids are weighed: what stands in the yard goes out (common practice, no source). */
class CandidateTest {
    private static final Prices PRICED =
            new Prices(4.5, 0, 1.2, Map.of("UAN 28", 1.2, "UAN 30", 1.2, "UAN 32", 1.2, "anhydrous ammonia", .9));

    private static Set<String> liquids(Prices prices, List<Stock> stock) {
        Farm farm =
                RecordCopy.with(RecordCopy.with(new TestFarm().farm(), "rules.prices", prices), "shelf.stock", stock);
        return Candidate.of(farm, farm.rigs()).stream()
                .map(c -> c.product().name())
                .collect(Collectors.toSet());
    }

    private static Stock gallons(String product, double amount) {
        return new Stock(product, amount, "gal", amount * 3.785411784, Double.NaN, "", "yard");
    }

    @Test
    void of_priced_strengths_only_the_one_in_the_yard_is_weighed() {
        assertThat(liquids(PRICED, List.of(gallons("UAN 30", 900), gallons("UAN 28", 0))))
                .containsExactly("UAN 30");
    }

    @Test
    void with_none_in_the_yard_every_priced_strength_is_and_ammonia_never() {
        assertThat(liquids(PRICED, List.of(gallons("anhydrous ammonia", 500))))
                .containsExactlyInAnyOrder("UAN 28", "UAN 30", "UAN 32");
    }

    @Test
    void without_any_price_it_is_the_strongest_solution() {
        assertThat(liquids(new Prices(4.5, 0, 1.2, Map.of()), List.of())).containsExactly("UAN 32");
    }
}
