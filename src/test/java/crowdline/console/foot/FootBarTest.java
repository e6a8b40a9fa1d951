package crowdline.console.foot;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.ConsolePane;
import crowdline.console.foot.FootBar.Foot;
import crowdline.console.keys.CommandActions;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Tone;
import crowdline.console.theme.Zoom;
import java.awt.event.ActionEvent;
import java.awt.image.BufferedImage;
import java.util.List;
import javax.swing.AbstractAction;
import org.junit.jupiter.api.Test;

class FootBarTest {
    private static final Appearance DAY = new Appearance(Themes.DAY, Zoom.NONE);
    private static final Mark TROUBLE = new Mark(Form.DIAMOND, Tone.CAUTION, "The pedal is not there");

    @Test
    void aMessageDoesNotHideWhosePaceTheTimesAreFor() {
        FootBar bar = new FootBar(DAY);
        Foot foot = new Foot(List.of(TROUBLE), FootBar.hint("Ann"), "Ann");
        assertThat(bar.spoken(foot)).isEqualTo("The pedal is not there. Times at Ann's pace. " + FootBar.CAUTION);
    }

    @Test
    void goodNewsGoesByItselfAndTroubleStays() {
        ConsolePane pane = new ConsolePane(DAY, new CommandActions(command -> {}), new AbstractAction("Demo") {
            @Override
            public void actionPerformed(ActionEvent event) {}
        });
        pane.foot().say(0, new Mark(Form.DISC, Tone.GOOD, "Saved show.json"));
        pane.foot().stand(0, List.of(TROUBLE));
        pane.foot().forgetGoodNews();
        assertThat(pane.foot().marks()).containsExactly(TROUBLE);
    }

    /** A timer that runs on after its window is closed would keep the program from ending. */
    @Test
    void whatWaitsIsCountedOnlyWhileItsWindowIsThere() {
        ConsolePane pane = new ConsolePane(DAY, new CommandActions(command -> {}), new AbstractAction("Demo") {
            @Override
            public void actionPerformed(ActionEvent event) {}
        });
        FootLine foot = pane.foot();
        foot.say(0, TROUBLE);
        assertThat(foot.isLooking()).isFalse();
        foot.row().addNotify();
        assertThat(foot.isLooking()).isTrue();
        foot.row().removeNotify();
        assertThat(foot.isLooking()).isFalse();
        foot.say(1, new Mark(Form.DISC, Tone.GOOD, "Saved show.json"));
        assertThat(foot.isLooking()).isFalse();
    }

    /** Two messages that differ in their last word only must not look the same. */
    @Test
    void whatToDoAboutAMissingPermissionIsNotCutOff() {
        String refusal = "Receiver ttyUSB0: Linux does not let you use /dev/ttyUSB0 (permission denied, error 13); run"
                + " \"sudo usermod -aG dialout $USER\", then log out and in ";
        for (Zoom zoom : List.of(Zoom.NONE, new Zoom(150), new Zoom(200))) {
            Appearance appearance = new Appearance(Themes.DAY, zoom);
            for (String speaker : List.of("", "Ann")) {
                assertThat(painted(appearance, refusal + "again", speaker))
                        .as(zoom + " at the pace of \"" + speaker + "\"")
                        .isNotEqualTo(painted(appearance, refusal + "AGAIN", speaker));
            }
        }
    }

    private static int[] painted(Appearance appearance, String message, String speaker) {
        FootBar bar = new FootBar(appearance);
        bar.show(new Foot(List.of(new Mark(Form.DIAMOND, Tone.CAUTION, message)), "", speaker));
        bar.setSize(1280, bar.getPreferredSize().height);
        BufferedImage image = new BufferedImage(1280, bar.getHeight(), BufferedImage.TYPE_INT_RGB);
        bar.paint(image.getGraphics());
        return image.getRGB(0, 0, 1280, bar.getHeight(), null, 0, 1280);
    }
}
