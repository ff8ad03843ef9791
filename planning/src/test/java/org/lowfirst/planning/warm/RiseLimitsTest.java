package org.lowfirst.planning.warm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.lowfirst.gas.PressureUnit;
import org.lowfirst.transfer.warm.Status;

class RiseLimitsTest {

    /** Two manuals, both read: 200 psi a minute, one of them with 13.7 bar beside it. */
    @Test
    void thePublishedLimitsAreTwoHundredPsiAMinute() {
        assertThat(RiseLimits.all()).hasSize(2).allSatisfy(limit -> {
            assertThat(limit.rate().toPerMinute(PressureUnit.PSI)).isCloseTo(200.0, within(1e-9));
            assertThat(limit.rate().toPerMinute(PressureUnit.BAR)).isCloseTo(13.7, within(0.1));
            assertThat(limit.source().status()).isEqualTo(Status.READ);
            assertThat(limit.source().source()).isNotBlank();
        });
        assertThat(RiseLimits.slowest()).isEqualTo(RiseLimits.all().get(0));
    }
}
