package org.lowfirst.station;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class IdTest {

    @ParameterizedTest
    @ValueSource(strings = {"a", "A-1", "0198f2d3-7b1a-7c55-9c1e-2f6f0b1d9a10", "supply_A.2"})
    void lettersDigitsPointsDashesAndUnderscoresAreAnId(String text) {
        assertThat(new SupplyId(text).value()).isEqualTo(text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "-a", ".a", "a b", "a/b", "\u00e4", "a\n", "a'b"})
    void anythingElseIsNot(String text) {
        assertThatIllegalArgumentException().isThrownBy(() -> new SupplyId(text));
    }

    @ParameterizedTest
    @ValueSource(ints = {64, 65})
    void anIdHasAtMost64Characters(int length) {
        String text = "a".repeat(length);
        if (length <= 64) {
            assertThat(new EntryKey(text).value()).hasSize(length);
        } else {
            assertThatIllegalArgumentException().isThrownBy(() -> new EntryKey(text));
        }
    }
}
