package org.lowfirst.app.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Random;
import org.junit.jupiter.api.Test;

final class JsonLineTest {

    @Test
    void membersKeepTheirOrderAndAreSetApart() {
        String text = new JsonLine()
                .openObject()
                .key("a")
                .value(1)
                .key("b")
                .openList()
                .value(true)
                .nothing()
                .openObject()
                .closeObject()
                .closeList()
                .key("c")
                .value("x")
                .closeObject()
                .toString();
        assertThat(text).isEqualTo("{\"a\":1,\"b\":[true,null,{}],\"c\":\"x\"}");
    }

    /** RFC 8259 section 7: quotation mark, reverse solidus and U+0000 to U+001F must be escaped. */
    @Test
    void textsAreEscapedAsTheStandardWants() {
        assertThat(new JsonLine().value("a\"b\\c\n\t\u0001\u00e9\u20ac").toString())
                .isEqualTo("\"a\\\"b\\\\c\\u000a\\u0009\\u0001\u00e9\u20ac\"");
        assertThat(new JsonLine().value("\uD83D\uDE00\uD83D").toString()).isEqualTo("\"\uD83D\uDE00\\ud83d\"");
    }

    @Test
    void numbersReadBackAsTheSameDouble() {
        Random random = new Random(20);
        for (int i = 0; i < 10_000; i++) {
            double value = Double.longBitsToDouble(random.nextLong());
            if (Double.isFinite(value)) {
                assertThat(Double.parseDouble(new JsonLine().value(value).toString()))
                        .isEqualTo(value + 0.0);
            }
        }
        assertThat(new JsonLine().value(150.0).toString()).isEqualTo("150");
        assertThat(new JsonLine().value(0.1 + 0.2).toString()).isEqualTo("0.30000000000000004");
    }

    @Test
    void whatIsNoNumberIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new JsonLine().value(Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> new JsonLine().value(Double.POSITIVE_INFINITY));
    }
}
