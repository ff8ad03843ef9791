package org.lowfirst.web.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.lowfirst.app.journal.Trouble;
import org.lowfirst.station.Language;

final class StorageWordsTest {

    private static final Path FILE = Path.of("lowfirst.db");

    private static final List<Trouble> TROUBLES = List.of(
            new Trouble.ReadOnly(FILE),
            new Trouble.Locked(FILE),
            new Trouble.NewerVersion(FILE, "12", "9"),
            new Trouble.NotAJournal(FILE),
            new Trouble.DiskFull(FILE),
            new Trouble.Damaged(FILE, "malformed"));

    @Test
    void pagesSayInEnglishWhatTheCommandLineSays() {
        assertThat(TROUBLES)
                .allSatisfy(trouble -> assertThat(StorageWords.of(trouble, Spoken.words(Language.ENGLISH)))
                        .isEqualTo(trouble.inWords()));
    }

    @Test
    void everyTroubleIsSaidInGermanAndNamesItsFile() {
        assertThat(TROUBLES)
                .allSatisfy(trouble -> assertThat(StorageWords.of(trouble, Spoken.words(Language.GERMAN)))
                        .contains("lowfirst.db")
                        .isNotEqualTo(trouble.inWords()));
    }

    @Test
    void noTroubleIsLeftOut() {
        Set<Class<?>> said = TROUBLES.stream().map(Object::getClass).collect(Collectors.toSet());
        assertThat(said).containsExactlyInAnyOrder(Trouble.class.getPermittedSubclasses());
    }
}
