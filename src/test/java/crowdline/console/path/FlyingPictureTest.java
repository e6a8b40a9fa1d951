package crowdline.console.path;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.theme.Appearance;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import crowdline.flight.body.Vec;
import crowdline.show.aircraft.Outline;
import crowdline.show.figure.MomentKind;
import crowdline.sight.picture.Caption;
import crowdline.sight.picture.Flown;
import crowdline.sight.picture.Pose;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A figure is watched by the clock that is handed in; its timer plays no part here, as nobody sees it. */
class FlyingPictureTest {
    private double nowS = 1000;
    private final FlyingPicture picture = new FlyingPicture(new Appearance(Themes.DAY, Zoom.NONE), () -> nowS);

    private static Flown straight() {
        List<Pose> poses = new ArrayList<>();
        for (int i = 0; i <= 80; i++) {
            poses.add(new Pose(i / 10.0, new Vec(5 * i, 0, 100), new Vec(1, 0, 0), Vec.UP, 1));
        }
        return new Flown(
                poses,
                List.of(
                        new Caption(0, MomentKind.ROLLS, "begins"),
                        new Caption(3, MomentKind.ROLLS, "rolls"),
                        new Caption(8, MomentKind.ROLLS, "flies out")));
    }

    @BeforeEach
    void watch() {
        picture.watch(SkyView.whole(straight(), Outline.MONOPLANE));
    }

    private String caption() {
        SkyView shown = picture.shown();
        assertThat(shown).isNotNull();
        return shown.caption();
    }

    @Test
    void standsThereWholeUntilItIsFlown() {
        assertThat(picture.atS()).isEmpty();
        assertThat(picture.isPlaying()).isFalse();
        assertThat(caption()).isEmpty();
    }

    @Test
    void fliesByTheClockAndStopsWhereItIs() {
        picture.toggle();
        assertThat(picture.isPlaying()).isTrue();
        nowS += 4;
        assertThat(picture.atS()).hasValue(4);
        picture.toggle();
        nowS += 100;
        assertThat(picture.atS()).hasValue(4);
        assertThat(caption()).isEqualTo("rolls");
    }

    @Test
    void goesFromMomentToMomentAndStandsThere() {
        picture.step(true);
        assertThat(picture.atS()).hasValue(0);
        picture.step(true);
        assertThat(picture.atS()).hasValue(3);
        assertThat(caption()).isEqualTo("rolls");
        nowS += 50;
        assertThat(picture.atS()).hasValue(3);
        picture.step(true);
        picture.step(true);
        assertThat(picture.atS()).hasValue(8);
        picture.step(false);
        assertThat(picture.atS()).hasValue(3);
    }

    @Test
    void halfAsFastTakesTwiceAsLong() {
        picture.change(-1);
        picture.toggle();
        nowS += 4;
        assertThat(picture.atS()).hasValue(2);
        assertThat(picture.speed()).isEqualTo("½×");
    }

    @Test
    void anotherFigureIsWholeAgainAndTheSameOneGoesOn() {
        picture.toggle();
        nowS += 4;
        picture.watch(SkyView.whole(straight(), Outline.MONOPLANE));
        assertThat(picture.atS()).hasValue(4);
        picture.watch(SkyView.whole(straight(), Outline.BIPLANE));
        assertThat(picture.atS()).isEmpty();
    }

    @Test
    void nothingFliesWhereNothingIsDrawn() {
        picture.watch(SkyView.NONE);
        picture.toggle();
        picture.step(true);
        assertThat(picture.hasFlight()).isFalse();
        assertThat(picture.atS()).isEmpty();
    }
}
