package crowdline.console.prepare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.console.prepare.figure.Drag;
import crowdline.console.prepare.figure.FigureCommands;
import crowdline.console.prepare.figure.Nudge;
import crowdline.console.prepare.figure.PathPicture;
import crowdline.edit.Change;
import crowdline.show.Show;
import crowdline.show.Venue;
import crowdline.show.figure.Asked;
import java.awt.event.MouseEvent;
import java.awt.image.BufferedImage;
import java.util.Objects;
import org.junit.jupiter.api.Test;

class MovingFiguresTest extends ActsFixture {
    private double alongM(String figure) {
        return Objects.requireNonNull(figure(figure).edit().place()).alongM();
    }

    @Test
    void aFigureIsMovedByKeysAndTheRestFollowsInOneStep() {
        Show before = sample.editing.now();
        double was = alongM("slow roll");
        chooseFigure("slow roll");
        FigureCommands chosen = panel.acts().act().commands().orElseThrow();
        chosen.nudge(Nudge.ALONG, 50);
        chosen.nudge(Nudge.ALONG, 50);
        chosen.nudge(Nudge.ALONG, 50);
        assertThat(alongM("slow roll")).isCloseTo(was + 150, within(70.0));
        assertThat(asked("slow roll")).map(Asked::alongM).contains(Math.rint(was / 10) * 10 + 150);
        assertThat(sample.editing.undo()).contains("Pin the place of slow roll");
        assertThat(sample.editing.now()).isEqualTo(before);
    }

    @Test
    void aFigureIsFlownHigherAndLonger() {
        chooseFigure("slow roll");
        double ft = Objects.requireNonNull(figure("slow roll").edit().place()).beginsFt();
        double seconds =
                Objects.requireNonNull(figure("slow roll").edit().place()).seconds();
        panel.acts().act().commands().orElseThrow().nudge(Nudge.HEIGHT, 300);
        assertThat(Objects.requireNonNull(figure("slow roll").edit().place()).beginsFt())
                .isCloseTo(ft + 300, within(60.0));
        panel.acts().act().commands().orElseThrow().nudge(Nudge.LENGTH, 4);
        assertThat(Objects.requireNonNull(figure("slow roll").edit().place()).seconds())
                .isCloseTo(seconds + 4, within(1.0));
        assertThat(sample.refused)
                .as("said, and nothing refused")
                .containsExactly("Put in to fit: “climbing” ahead of slow roll");
    }

    @Test
    void whatCannotBeLongerIsRefusedInASentence() {
        Show before = sample.editing.now();
        chooseFigure("loop");
        panel.acts().act().commands().orElseThrow().nudge(Nudge.LENGTH, 12);
        assertThat(sample.refused)
                .singleElement()
                .satisfies(
                        why -> assertThat(why).matches("Loop cannot be flown in [0-9]+ s: only its straight lines .*"));
        assertThat(sample.editing.now()).isEqualTo(before);
    }

    @Test
    void aFigureDraggedOutOfTheDisplayAreaIsRefusedByTheLayout() {
        Venue v = sample.editing.now().venue();
        sample.editing.change(Change.of(
                "Limits",
                sample.editing
                        .now()
                        .withVenue(new Venue(
                                v.name(),
                                null,
                                null,
                                null,
                                null,
                                null,
                                v.timeZone(),
                                new Venue.Limits(null, null, 800.0, null)))));
        Show before = sample.editing.now();
        chooseFigure("slow roll");
        panel.acts().act().commands().orElseThrow().drag(Drag.of(2_000, 3, 1));
        assertThat(sample.refused)
                .singleElement()
                .satisfies(
                        why -> assertThat(why)
                                .matches(
                                        "Slow roll reaches [0-9]+ m beyond the right end of the display area; it needs .* further in."));
        assertThat(sample.editing.now()).isEqualTo(before);
    }

    @Test
    void aHandMovesAFigureOneWayAtATime() {
        assertThat(Drag.of(30, -10, 0.5)).isEqualTo(new Drag(60, 0));
        assertThat(Drag.of(-10, 30, 0.5)).isEqualTo(new Drag(0, -60));
    }

    @Test
    void draggingThePictureMovesTheChosenFigure() {
        chooseFigure("slow roll");
        PathPicture picture = ListPageTest.find(panel, PathPicture.class, "The act seen");
        picture.setSize(500, 300);
        picture.paint(new BufferedImage(500, 300, BufferedImage.TYPE_INT_RGB).createGraphics());
        double was = alongM("slow roll");
        drag(picture, MouseEvent.MOUSE_PRESSED, 200, 100);
        drag(picture, MouseEvent.MOUSE_DRAGGED, 215, 102);
        drag(picture, MouseEvent.MOUSE_RELEASED, 230, 102);
        assertThat(sample.refused)
                .as("said, and nothing refused")
                .containsExactly("Put in to fit: “flying on to the right” ahead of slow roll");
        assertThat(alongM("slow roll")).isGreaterThan(was + 10);
    }

    private static void drag(PathPicture on, int what, int x, int y) {
        int held = what == MouseEvent.MOUSE_RELEASED ? 0 : MouseEvent.BUTTON1_DOWN_MASK;
        on.dispatchEvent(new MouseEvent(on, what, 1, held, x, y, 1, false, MouseEvent.BUTTON1));
    }
}
