package org.lowfirst.app.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.lowfirst.station.Fact;

/**
 * One file for each kind and version of payload that was ever written, kept for ever and never edited: journals out there
 * hold the same. A new version gets files of its own beside the old ones.
 */
class GoldenFilesTest {

    static Stream<String> names() {
        return Samples.facts().keySet().stream();
    }

    @ParameterizedTest
    @MethodSource("names")
    void theFileIsReadAsTheFact(String name) throws IOException {
        Fact fact = Objects.requireNonNull(Samples.facts().get(name));
        FactCodec<?> codec = FactCodecs.getCodec(fact);
        String text = golden(name + ".v" + codec.version() + ".json");
        assertThat(FactCodecs.decode(codec.kind(), codec.version(), JsonText.parseObject(text)))
                .isEqualTo(fact);
    }

    @ParameterizedTest
    @MethodSource("names")
    void theFactIsWrittenAsTheFile(String name) throws IOException {
        Fact fact = Objects.requireNonNull(Samples.facts().get(name));
        FactCodec<?> codec = FactCodecs.getCodec(fact);
        String written = CanonicalJson.write(codec.encode(fact).members());
        assertThat(written).isEqualTo(golden(name + ".v" + codec.version() + ".json"));
    }

    @Test
    void everyFactHasACodecASampleAndAKindOfItsOwn() {
        List<String> facts = Samples.kinds(Fact.class).map(Class::getName).toList();
        Set<String> kinds = new HashSet<>();
        List<String> coded = new ArrayList<>();
        for (FactCodec<?> codec : FactCodecs.ALL) {
            kinds.add(codec.kind());
            coded.add(codec.type().getName());
        }
        assertThat(kinds).hasSize(facts.size());
        assertThat(coded).containsExactlyInAnyOrderElementsOf(facts);
        assertThat(Samples.facts().values().stream().map(fact -> fact.getClass().getName()))
                .hasSameElementsAs(facts);
    }

    @Test
    void olderPayloadsComeForwardOneVersionAtATime() {
        Upcasters upcasters = new Upcasters(List.of(
                new Upcasters.Step("tap.opened", 1, old -> Map.of("turns", Objects.requireNonNull(old.get("n")))),
                new Upcasters.Step(
                        "tap.opened",
                        2,
                        old -> Map.of("turns", Objects.requireNonNull(old.get("turns")), "slowly", true))));
        assertThat(upcasters.upcast("tap.opened", 1, 3, Map.of("n", 2L)))
                .isEqualTo(Map.of("turns", 2L, "slowly", true));
        assertThat(upcasters.upcast("tap.opened", 3, 3, Map.of("turns", 5L))).isEqualTo(Map.of("turns", 5L));
    }

    private static String golden(String file) throws IOException {
        try (InputStream in = GoldenFilesTest.class.getResourceAsStream("golden/" + file)) {
            assertThat(in).as("golden/" + file).isNotNull();
            return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8).strip();
        }
    }
}
