package crowdline.glossary.drill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import crowdline.glossary.drill.Memory.Answer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Against P. A. Wozniak, Optimization of learning, 1990, section 3.2. */
class MemoryTest {
    @Test
    void intervalsOfAnEasyThingAreOneDayThenSixThenLongerByTheEasiness() {
        // I(1) := 1, I(2) := 6, I(n) := I(n-1) * EF; EF stays 2.5 for answers of quality 4: 1, 6, 15, 37.5 up to 38,
        // 95.
        Memory memory = Memory.NEW;
        long today = 100;
        for (int days : new int[] {1, 6, 15, 38, 95}) {
            memory = memory.after(Answer.RIGHT, today);
            assertThat(memory.intervalDays()).isEqualTo(days);
            assertThat(memory.easiness()).isEqualTo(2.5);
            assertThat(memory.isDue(today + days - 1)).isFalse();
            assertThat(memory.isDue(today + days)).isTrue();
            today += days;
        }
    }

    @ParameterizedTest
    @CsvSource({"PERFECT, 0.10", "RIGHT, 0.00", "PARTLY, -0.14"})
    void easinessChangesAsTheSourceHasIt(Answer answer, double change) {
        assertThat(Memory.NEW.after(answer, 0).easiness()).isCloseTo(2.5 + change, within(1e-12));
    }

    @ParameterizedTest
    @EnumSource(names = {"PERFECT", "RIGHT", "PARTLY"})
    void bothFormulasOfTheSourceAgree(Answer answer) {
        // The source gives it simplified as well: EF' := EF - 0.8 + 0.28 q - 0.02 q q.
        int q = answer.quality();
        assertThat(new Memory(3, 2, 10, 0).after(answer, 10).easiness())
                .isCloseTo(2 - 0.8 + 0.28 * q - 0.02 * q * q, within(1e-12));
    }

    @Test
    void wrongAnswerBeginsAgainAndLeavesTheEasiness() {
        Memory after = new Memory(4, 2.2, 40, 0).after(Answer.WRONG, 40);
        assertThat(after).isEqualTo(new Memory(0, 2.2, 1, 40));
        assertThat(after.after(Answer.RIGHT, 41).intervalDays()).isEqualTo(1);
    }

    @Test
    void easinessNeverFallsBelowOnePointThree() {
        Memory memory = Memory.NEW;
        for (int i = 0; i < 20; i++) {
            memory = memory.after(Answer.PARTLY, i);
        }
        assertThat(memory.easiness()).isEqualTo(1.3);
    }

    @Test
    void intervalsStayDatesHoweverOftenItIsRecalled() {
        Memory memory = Memory.NEW;
        for (int i = 0; i < 2000; i++) {
            memory = memory.after(Answer.PERFECT, i);
        }
        assertThat(memory.intervalDays()).isEqualTo(36_500);
    }

    @Test
    void numbersThatNobodyCanRememberAreRefused() {
        assertThatThrownBy(() -> new Memory(0, Double.NaN, 0, 0)).hasMessageContaining("easiness must be from 1.3");
        assertThatThrownBy(() -> new Memory(-1, 2, 0, 0)).hasMessageContaining("repetitions");
        assertThatThrownBy(() -> new Memory(0, 2, -1, 0)).hasMessageContaining("interval");
    }
}
