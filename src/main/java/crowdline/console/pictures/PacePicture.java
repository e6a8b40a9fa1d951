package crowdline.console.pictures;

import crowdline.console.pace.IdlePaceHost;
import crowdline.console.pace.Microphone;
import crowdline.console.pace.PaceDialog;
import crowdline.console.pace.PaceHost;
import crowdline.console.pace.PacePanel;
import crowdline.console.pictures.Pictures.Setting;
import crowdline.console.theme.Appearance;
import crowdline.console.window.Snapshot;
import crowdline.speech.hear.Hearing;
import crowdline.speech.hear.Hearing.State;
import crowdline.speech.hear.Utterance;
import crowdline.speech.say.SpokenText;
import java.awt.Dimension;
import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Locale;

/** Moments of the pace window, as large as it is over a window of the setting's size. */
enum PacePicture {
    /** Whose pace counts. */
    WHO {
        @Override
        void act(PacePanel panel) {}
    },
    /** The fourth remark, the watch running. */
    KEY {
        @Override
        void act(PacePanel panel) {
            panel.begin();
            for (int i = 0; i < SPACES; i++) {
                panel.press(KeyEvent.VK_SPACE, i * SPACE_EVERY_S);
            }
        }
    },
    /** One remark was heard, and the next is being said. */
    MICROPHONE {
        @Override
        void act(PacePanel panel) {
            panel.begin();
            panel.press(KeyEvent.VK_M, 0);
        }
    };

    private static final int SPACES = 7;
    private static final double SPACE_EVERY_S = 4;

    /** Heard at once when the microphone is chosen: one remark, and the beginning of another. */
    private static final List<Hearing> HEARD = List.of(
            new Hearing(State.QUIET, 0, false, 0, new Utterance(1, 4.2), null),
            new Hearing(State.SPEECH, 24, false, 1.4, null, null));

    abstract void act(PacePanel panel);

    String title() {
        return "pace-" + name().toLowerCase(Locale.ROOT);
    }

    BufferedImage draw(Appearance appearance, Setting setting, List<SpokenText> remarks) {
        Dimension size = PaceDialog.size(appearance, new Dimension(setting.widthPx(), setting.heightPx()));
        PacePanel panel = new PacePanel(
                appearance,
                new PaceHost.Found(List.of("Wenna Pask", "Aldous Crake"), "Wenna Pask", remarks, ""),
                new IdlePaceHost(PacePicture::heard),
                () -> {});
        panel.setPreferredSize(size);
        act(panel);
        return Snapshot.of(panel, size.width, size.height);
    }

    /** A microphone that has heard what the picture shows. */
    private static Microphone.Listening heard(Microphone.Listener listener) {
        listener.hears(HEARD);
        return Microphone.Listening.NONE;
    }
}
