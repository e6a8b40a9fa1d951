package crowdline.telemetry.serial;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.telemetry.serial.ButtonLearner.Learning;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ButtonsTest {
    private static final ButtonSignal A = new ButtonSignal.Sent('A');
    private static final ButtonSignal B = new ButtonSignal.Sent('B');
    private static final ButtonSignal DOWN = new ButtonSignal.Turned(ControlLine.CTS, true);
    private static final ButtonSignal UP = new ButtonSignal.Turned(ControlLine.CTS, false);

    private final Buttons buttons = new Buttons(Map.of(A, "next", DOWN, "hold"), Buttons.QUIET_S);

    @Test
    void learnedButtonGivesItsCommand() {
        assertThat(buttons.hear(at(1, A))).hasValue("next");
        assertThat(buttons.hear(at(2, B))).isEmpty();
        assertThat(buttons.hear(at(3, DOWN))).hasValue("hold");
    }

    @Test
    void bouncingContactCountsOnceGoingDownAndNotAtAllComingUp() {
        List<String> carriedOut = new ArrayList<>();
        double[] downS = {1.000, 1.004, 1.009, 2.003, 2.011};
        double[] upS = {1.002, 1.006, 2.000, 2.006, 2.015};
        for (int i = 0; i < 3; i++) {
            buttons.hear(at(downS[i], DOWN)).ifPresent(carriedOut::add);
            buttons.hear(at(upS[i], UP)).ifPresent(carriedOut::add);
        }
        for (int i = 3; i < 5; i++) {
            buttons.hear(at(downS[i], DOWN)).ifPresent(carriedOut::add);
            buttons.hear(at(upS[i], UP)).ifPresent(carriedOut::add);
        }

        assertThat(carriedOut).containsExactly("hold");
    }

    @Test
    void quickSecondPressCounts() {
        assertThat(buttons.hear(at(1.00, DOWN))).isPresent();
        assertThat(buttons.hear(at(1.08, UP))).isEmpty();
        assertThat(buttons.hear(at(1.16, DOWN))).isPresent();
    }

    @Test
    void otherButtonAtTheSameTimeCounts() {
        assertThat(buttons.hear(at(1.00, DOWN))).hasValue("hold");
        assertThat(buttons.hear(at(1.01, A))).hasValue("next");
    }

    @Test
    void buttonPressedTwiceIsLearned() {
        ButtonLearner learner = new ButtonLearner("next", Map.of(), Buttons.QUIET_S);

        assertThat(learner.state()).isEqualTo(new Learning.Waiting());
        assertThat(learner.hear(at(1, A))).isEqualTo(new Learning.Once(A, 1));
        assertThat(learner.learned()).isEmpty();
        assertThat(learner.hear(at(2, A))).isEqualTo(new Learning.Learned(A));
        assertThat(learner.learned()).hasValue(A);
        assertThat(learner.hear(at(3, B))).isEqualTo(new Learning.Learned(A));
    }

    @Test
    void lettingGoOfPedalIsNotItsSecondPress() {
        ButtonLearner learner = new ButtonLearner("next", Map.of(), Buttons.QUIET_S);
        learner.hear(at(1.0, DOWN));

        assertThat(learner.hear(at(1.4, UP))).isEqualTo(new Learning.Once(DOWN, 1.0));
        assertThat(learner.hear(at(2.0, DOWN))).isEqualTo(new Learning.Learned(DOWN));
    }

    @Test
    void pedalThatOpensWhenPressedIsLearnedByItsPress() {
        ButtonLearner learner = new ButtonLearner("next", Map.of(), Buttons.QUIET_S);
        learner.hear(at(1.0, UP));
        learner.hear(at(1.4, DOWN));

        assertThat(learner.hear(at(2.0, UP))).isEqualTo(new Learning.Learned(UP));
    }

    @Test
    void lineEndAfterTheByteIsPartOfThePress() {
        ButtonLearner learner = new ButtonLearner("next", Map.of(), Buttons.QUIET_S);
        learner.hear(at(1.0, A));
        learner.hear(at(1.001, new ButtonSignal.Sent('\n')));

        assertThat(learner.hear(at(2.0, A))).isEqualTo(new Learning.Learned(A));
    }

    @Test
    void differentSecondPressBeginsAgain() {
        ButtonLearner learner = new ButtonLearner("next", Map.of(), Buttons.QUIET_S);
        learner.hear(at(1, A));

        assertThat(learner.hear(at(2, B))).isEqualTo(new Learning.Differed(A, B));
        assertThat(learner.hear(at(3, B))).isEqualTo(new Learning.Once(B, 3));
    }

    @Test
    void buttonOfAnotherCommandIsNotTaken() {
        ButtonLearner learner = new ButtonLearner("next", Map.of(A, "back", B, "next"), Buttons.QUIET_S);

        assertThat(learner.hear(at(1, A))).isEqualTo(new Learning.Taken(A, "back"));
        assertThat(learner.hear(at(2, B))).isEqualTo(new Learning.Once(B, 2));
    }

    @Test
    void codesReadBackAsTheSameSignal() {
        for (ButtonSignal signal : List.of(A, DOWN, UP, new ButtonSignal.Turned(ControlLine.DSR, true))) {
            assertThat(ButtonSignal.of(signal.code())).hasValue(signal);
        }
        assertThat(ButtonSignal.of("byte 256")).isEmpty();
        assertThat(ButtonSignal.of("CTS")).isEmpty();
        assertThat(A.code()).isEqualTo("byte 65");
        assertThat(DOWN.code()).isEqualTo("CTS on");
        assertThat(A.words()).isEqualTo("byte 0x41");
        assertThat(DOWN.words()).isEqualTo("CTS line goes on");
    }

    @Test
    void portHearsBytesAndLinesAndComesBackAfterItWasGone() {
        TestClock clock = new TestClock();
        FakePort port = new FakePort(clock, List.of(9600), FakePort.ANY);
        List<ButtonSignal> heard = new ArrayList<>();
        ButtonSession session = new ButtonSession(port, clock, signal -> heard.add(signal.signal()));
        port.on.add(ControlLine.DSR);
        session.step(); // a line that is on from the start was not pressed
        listenFirst(session);
        assertThat(heard).isEmpty();

        port.on.add(ControlLine.CTS);
        port.send("A");
        session.step();
        port.on.remove(ControlLine.CTS);
        collect(session);
        assertThat(heard).containsExactlyInAnyOrder(A, DOWN, UP);

        port.unplug();
        assertThat(session.step()).isEqualTo(ButtonSession.RETRY_MS);
        assertThat(session.status().text()).isEqualTo("buttons gone, looking for them again");
        port.plug();
        session.step();
        listenFirst(session);
        port.send("B");
        collect(session);
        assertThat(heard).endsWith(B);
        assertThat(session.status().text()).isEqualTo("buttons ready");
    }

    private static void listenFirst(ButtonSession session) {
        for (double s = 0; s <= FootFilter.LISTEN_FIRST_S; s += ButtonSession.LOOK_MS / 1000.0) {
            session.step();
        }
    }

    private static void collect(ButtonSession session) {
        for (double s = 0; s <= FootFilter.COLLECT_S + 0.02; s += ButtonSession.LOOK_MS / 1000.0) {
            session.step();
        }
    }

    @Test
    void receiverAtThePortIsToldAndPressesNothing() {
        TestClock clock = new TestClock();
        FakePort port = new FakePort(clock, List.of(9600), FakePort.ANY);
        List<ButtonSignal> heard = new ArrayList<>();
        ButtonSession session = new ButtonSession(port, clock, signal -> heard.add(signal.signal()));
        session.step();
        for (int second = 0; second < 5; second++) {
            port.send("$GPGGA,123519,4807.038,N,01131.000,E,1,08,");
            port.send("0.9,545.4,M,46.9,M,,*47\r\n");
            for (int i = 0; i < 100; i++) {
                session.step();
            }
        }
        assertThat(heard).isEmpty();
        assertThat(session.status())
                .isEqualTo(
                        new ButtonStatus(
                                ButtonStatus.State.SENDING,
                                "ttyFAKE0 never stops sending, so it is a receiver, not a pedal; choose another port with Ctrl+B"));
        listenFirst(session);
        port.send("A");
        collect(session);
        assertThat(heard).as("once the stream is over").containsExactly(A);
        assertThat(session.status().text()).isEqualTo("buttons ready");
    }

    private static HeardSignal at(double atS, ButtonSignal signal) {
        return new HeardSignal(signal, atS);
    }
}
