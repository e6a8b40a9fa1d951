package crowdline.console;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.FootBar.Foot;
import crowdline.console.keys.CommandActions;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Tone;
import crowdline.console.theme.Zoom;
import java.awt.event.ActionEvent;
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
        assertThat(bar.spoken(foot)).isEqualTo("The pedal is not there. Times are for Ann. " + FootBar.CAUTION);
    }

    @Test
    void goodNewsGoesByItselfAndTroubleStays() {
        ConsolePane pane = new ConsolePane(DAY, new CommandActions(command -> {}), new AbstractAction("Demo") {
            @Override
            public void actionPerformed(ActionEvent event) {}
        });
        pane.showBanners(List.of(new Mark(Form.DISC, Tone.GOOD, "Saved show.json"), TROUBLE));
        pane.forgetGoodNews();
        assertThat(pane.banners()).containsExactly(TROUBLE);
    }
}
