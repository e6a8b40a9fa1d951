package crowdline.show;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class AnnouncementTest {
    private static Announcement of(String... words) {
        return new Announcement("lost", "Lost child", List.of(words), null);
    }

    @Test
    void blanksAreToldOnceEachInTheOrderTheyCome() {
        assertThat(of("At [where], [ age and sex ].", "Again at [where].").blanks())
                .containsExactly("where", "age and sex");
        assertThat(of("Good night.").blanks()).isEmpty();
    }

    @Test
    void aBracketThatIsLeftOpenIsABlankToItsEnd() {
        Announcement open = of("A girl [age, at [where].", "Please [come to", "Or [].");
        assertThat(open.blanks()).containsExactly("age, at", "where", "come to", "what belongs here");
        assertThat(open.words(Map.of("age, at", "of six, at", "come to", "come now.")))
                .containsExactly("A girl of six, at[where].", "Please come now.", "Or [].");
        assertThat(open.hasLooseBracket()).isTrue();
        assertThat(of("At [where].").hasLooseBracket()).isFalse();
        assertThat(of("At where].").hasLooseBracket()).isTrue();
    }

    @Test
    void whatIsStillMissingIsTold() {
        Announcement two = of("At [where], [age].");
        assertThat(two.lacks(Map.of("where", "the gate"))).isTrue();
        assertThat(two.lacks(Map.of("where", "the gate", "age", " "))).isTrue();
        assertThat(two.lacks(Map.of("where", "the gate", "age", "six"))).isFalse();
        assertThat(of("Good night.").lacks(Map.of())).isFalse();
    }

    @Test
    void blanksAreFilledInWhereSomethingIsSaidForThem() {
        assertThat(of("At [where], [age].", "At [where].").words(Map.of("where", "gate $1 \\2", "age", " ")))
                .containsExactly("At gate $1 \\2, [age].", "At gate $1 \\2.");
    }

    @Test
    void agreedWithNobodyIsSaid() {
        assertThat(of("x").isAgreed()).isFalse();
        assertThat(of("x").agreement()).isEqualTo("Nobody has agreed these words yet");
        Announcement agreed = new Announcement("a", "b", List.of("c"), "Ada, 2 May");
        assertThat(agreed.agreement()).isEqualTo("Agreed with Ada, 2 May");
    }

    @Test
    void anAnnouncementWithoutWordsIsNone() {
        assertThatThrownBy(AnnouncementTest::of).hasMessageContaining("has no words");
    }
}
