package crowdline.console.paint;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.theme.Appearance;
import crowdline.console.theme.LookAndFeel;
import crowdline.console.theme.TextRole;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class DigitsTest {
    @BeforeAll
    static void loadType() {
        LookAndFeel.loadType();
    }

    @Test
    void noMoreDigitsAreOfferedThanThereAreLines() {
        assertThat(Digits.upTo(1, "open")).isEqualTo("1 opens");
        assertThat(Digits.upTo(2, "open")).isEqualTo("1 or 2 open");
        assertThat(Digits.upTo(6, "answer")).isEqualTo("1 to 6 answer");
    }

    @Test
    void noDigitNeedsMoreRoomThanTheOneThatStandsForAll() {
        Appearance worn = new Appearance(Themes.DAY, Zoom.NONE);
        FontRenderContext exact = new FontRenderContext(null, true, true);
        for (Font font : List.of(worn.plain(TextRole.VALUE), worn.strong(TextRole.VALUE))) {
            double still = font.getStringBounds(Digits.still("7"), exact).getWidth();
            for (char digit = '0'; digit <= '9'; digit++) {
                assertThat(font.getStringBounds(String.valueOf(digit), exact).getWidth())
                        .as(digit + " in " + font.getFontName())
                        .isLessThanOrEqualTo(still);
            }
        }
    }
}
