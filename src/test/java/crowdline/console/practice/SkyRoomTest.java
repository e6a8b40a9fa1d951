package crowdline.console.practice;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Rectangle;
import java.util.List;
import org.junit.jupiter.api.Test;

class SkyRoomTest {
    private static final Rectangle SCREEN = new Rectangle(0, 0, 1920, 1080);

    private static SkyRoom beside(Rectangle console, Rectangle... screens) {
        return SkyRoom.beside(console, List.of(screens)).orElseThrow();
    }

    @Test
    void onTwoScreensItFillsTheOneTheConsoleIsNotOn() {
        Rectangle left = new Rectangle(-1600, 0, 1600, 900);
        assertThat(beside(SCREEN, left, SCREEN)).isEqualTo(new SkyRoom(left, SCREEN));
        Rectangle console = new Rectangle(-1500, 40, 1280, 800);
        assertThat(beside(console, left, SCREEN)).isEqualTo(new SkyRoom(SCREEN, console));
    }

    @Test
    void ofTwoOtherScreensItTakesTheLarger() {
        Rectangle small = new Rectangle(1920, 0, 800, 600);
        Rectangle large = new Rectangle(2720, 0, 3840, 2160);
        assertThat(beside(new Rectangle(0, 0, 1280, 800), SCREEN, small, large).sky())
                .isEqualTo(large);
    }

    @Test
    void onOneScreenItTakesRoomBesideTheConsoleAndCoversNoneOfIt() {
        for (Rectangle console : List.of(
                new Rectangle(0, 0, 1280, 800),
                new Rectangle(640, 280, 1280, 800),
                new Rectangle(0, 500, 1920, 580),
                new Rectangle(-200, -50, 1280, 800))) {
            SkyRoom room = beside(console, SCREEN);
            assertThat(room.console()).isEqualTo(console);
            assertThat(room.sky().intersects(console)).as("over %s", console).isFalse();
            assertThat(SCREEN.contains(room.sky()))
                    .as("on the screen beside %s", console)
                    .isTrue();
        }
    }

    @Test
    void aConsoleInTheMiddleMakesRoom() {
        SkyRoom room = beside(new Rectangle(320, 140, 1280, 800), SCREEN);
        assertThat(room.console()).as("a wide sky shows an act larger").isEqualTo(new Rectangle(320, 280, 1280, 800));
        assertThat(room.sky()).isEqualTo(new Rectangle(0, 0, 1920, 280));

        SkyRoom tall = beside(new Rectangle(320, 50, 1280, 1000), SCREEN);
        assertThat(tall.console()).isEqualTo(new Rectangle(0, 50, 1280, 1000));
        assertThat(tall.sky()).isEqualTo(new Rectangle(1280, 0, 640, 1080));
    }

    @Test
    void whereTheConsoleFillsTheOnlyScreenThereIsNoRoom() {
        assertThat(SkyRoom.beside(SCREEN, List.of(SCREEN))).isEmpty();
        assertThat(SkyRoom.beside(new Rectangle(0, 0, 1280, 800), List.of(new Rectangle(0, 0, 1366, 768))))
                .isEmpty();
    }
}
