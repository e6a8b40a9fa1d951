package crowdline.console;

import crowdline.console.incident.IncidentView;
import crowdline.console.keys.Command;
import crowdline.console.live.Handles;
import crowdline.console.live.LiveView;
import crowdline.console.live.OnAir;
import org.jspecify.annotations.Nullable;

/**
 * The incident page from the key that calls it to the word that leaves it. It is in front all that time, whatever the
 * running show has made of the key by then, and without a show as well. On the event thread.
 */
final class IncidentCall {
    private final Host host;
    private final Front front;
    private final ConsolePane pane;
    private boolean called;
    private double calledAtS;

    IncidentCall(Host host, Front front, ConsolePane pane) {
        this.host = host;
        this.front = front;
        this.pane = pane;
    }

    /** Brings the page to the front; again is harmless. */
    void open() {
        front.clear();
        pane.live().announcements().close();
        pane.live().find().close();
        if (!called) {
            called = true;
            calledAtS = host.nowS();
            tell(pane.live().running());
        }
        if (!pane.inIncident()) {
            pane.showIncident(called());
        }
    }

    /** The word was typed. */
    void leave() {
        called = false;
        OnAir show = pane.live().running();
        if (show != null) {
            show.resume();
        }
    }

    /** Another show runs now, and has to know of the page if it was called. */
    void runs(@Nullable OnAir show) {
        if (called) {
            tell(show);
        }
    }

    private static void tell(@Nullable OnAir show) {
        if (show != null && show.view().incident() == null) {
            show.carryOut(Command.INCIDENT, Handles.NONE);
        }
    }

    /**
     * The page to show instead of a moment of Live, or null.
     *
     * @param live the moment, null without a show
     */
    @Nullable
    IncidentView page(@Nullable LiveView live) {
        IncidentView shown = live == null ? null : live.incident();
        return shown != null || !called ? shown : called();
    }

    private IncidentView called() {
        OnAir show = pane.live().running();
        double openS = host.nowS() - calledAtS;
        return show == null ? host.incident(openS) : show.incident(openS);
    }
}
