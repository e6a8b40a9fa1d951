package crowdline.console.theme;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.UIManager;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Contrast as WCAG 2.2 counts it: success criteria 1.4.3 (4.5:1), 1.4.6 (7:1) and 1.4.11 (3:1 for shapes). */
class ThemesTest {
    static Stream<Theme> themes() {
        return Themes.all().stream();
    }

    @Test
    void contrastOfBlackOnWhiteIsTwentyOne() {
        assertThat(Contrast.ratio(Color.BLACK, Color.WHITE)).isCloseTo(21, within(1e-9));
    }

    @Test
    void contrastOfTheGreyThatJustPassesIsFourAndAHalf() {
        // #767676 on white is the well-known darkest-needed grey at 4.54:1 (W3C, Understanding SC 1.4.3).
        assertThat(Contrast.ratio(new Color(0x767676), Color.WHITE)).isCloseTo(4.54, within(0.005));
    }

    @ParameterizedTest
    @MethodSource("themes")
    void everyWordCanBeRead(Theme theme) {
        Palette p = theme.palette();
        for (Color ground : List.of(p.ground(), p.stage())) {
            for (Color word : List.of(p.text(), p.soft(), p.past(), p.accent())) {
                assertThat(Contrast.ratio(word, ground)).isGreaterThanOrEqualTo(4.5);
            }
        }
        assertThat(Contrast.ratio(p.onChosen(), p.chosen())).isGreaterThanOrEqualTo(4.5);
    }

    /** With the keys and without them: one looks back at a list to see where one was. */
    @ParameterizedTest
    @MethodSource("themes")
    void theChosenRowStandsOutAndCanBeRead(Theme theme) {
        LookAndFeel.wear(new Appearance(theme, Zoom.NONE));
        for (String rows : List.of("List", "Table", "Tree")) {
            for (String keys : List.of(".selection", ".selectionInactive")) {
                Color row = UIManager.getColor(rows + keys + "Background");
                assertThat(Contrast.ratio(row, theme.palette().stage()))
                        .as("%s%s on its list", rows, keys)
                        .isGreaterThanOrEqualTo(3);
                assertThat(Contrast.ratio(UIManager.getColor(rows + keys + "Foreground"), row))
                        .as("words on %s%s", rows, keys)
                        .isGreaterThanOrEqualTo(4.5);
            }
        }
        assertThat(Contrast.ratio(theme.palette().row(), theme.palette().stage()))
                .isGreaterThanOrEqualTo(3);
        assertThat(Contrast.ratio(theme.palette().onChosen(), theme.palette().row()))
                .isGreaterThanOrEqualTo(4.5);
    }

    @ParameterizedTest
    @MethodSource("themes")
    void stateAndLiveWordsHaveSevenToOne(Theme theme) {
        Palette p = theme.palette();
        for (Color ground : List.of(p.ground(), p.stage())) {
            assertThat(Contrast.ratio(p.text(), ground)).isGreaterThanOrEqualTo(7);
            for (Tone tone : Tone.values()) {
                assertThat(Contrast.ratio(theme.tone(tone), ground)).isGreaterThanOrEqualTo(7);
            }
        }
    }

    /** A field shows a name as it is written, and in the shipped type wherever that has the letters. */
    @ParameterizedTest
    @MethodSource("themes")
    void fieldsHaveTheLettersOfEveryScriptTheSystemHas(Theme theme) {
        LookAndFeel.loadType();
        Appearance appearance = new Appearance(theme, Zoom.NONE);
        FontRenderContext context = new FontRenderContext(null, true, true);
        for (Font type : List.of(appearance.plain(TextRole.BODY), appearance.strong(TextRole.BODY))) {
            for (String name : List.of("דנה כהן", "سلمى", "Šárka Ångström")) {
                if (new Font(Font.DIALOG, Font.PLAIN, 12).canDisplayUpTo(name) < 0) {
                    assertThat(type.canDisplayUpTo(name)).as(name).isEqualTo(-1);
                    assertThat(type.createGlyphVector(context, name).getGlyphCode(0))
                            .as("the box for no letter")
                            .isNotEqualTo(type.getMissingGlyphCode());
                }
            }
        }
        Font shipped = theme.typeface().plain(appearance.sizePx(TextRole.BODY, 1));
        assertThat(appearance.plain(TextRole.BODY).getStringBounds("Ground loop, 600 ft", context))
                .isEqualTo(shipped.getStringBounds("Ground loop, 600 ft", context));
    }

    @ParameterizedTest
    @MethodSource("themes")
    void barsAndPathsStandOut(Theme theme) {
        Palette p = theme.palette();
        assertThat(Contrast.ratio(p.accent(), p.sunk())).isGreaterThanOrEqualTo(3);
        assertThat(Contrast.ratio(p.path(), p.ground())).isGreaterThanOrEqualTo(3);
        assertThat(Contrast.ratio(p.pathNow(), p.ground())).isGreaterThanOrEqualTo(4.5);
    }

    @Test
    void sunlightHasTheMostContrast() {
        Palette p = Themes.SUNLIGHT.palette();
        assertThat(Contrast.ratio(p.text(), p.ground())).isCloseTo(21, within(1e-9));
    }

    @Test
    void themesComeRoundAgain() {
        Theme theme = Themes.DAY;
        for (int i = 0; i < Themes.all().size(); i++) {
            theme = Themes.after(theme);
        }
        assertThat(theme).isEqualTo(Themes.DAY);
    }

    /** What the library derives from the accent for a table's head is yellow in the day theme. */
    @ParameterizedTest
    @MethodSource("themes")
    void linesOfATableAreTheThemesOwn(Theme theme) {
        LookAndFeel.wear(new Appearance(theme, Zoom.NONE));
        for (String line :
                List.of("Table.gridColor", "TableHeader.separatorColor", "TableHeader.bottomSeparatorColor")) {
            assertThat(UIManager.getColor(line))
                    .as(line)
                    .isEqualTo(theme.palette().rule());
        }
    }
}
