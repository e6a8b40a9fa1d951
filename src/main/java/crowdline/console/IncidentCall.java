package crowdline.console;

import crowdline.console.incident.IncidentView;
import crowdline.console.keys.Command;
import crowdline.console.live.LiveView;
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
    private boolean told;
    private double calledAtS;

    IncidentCall(Host host, Front front, ConsolePane pane) {
        this.host = host;
        this.front = front;
        this.pane = pane;
    }

    /** Brings the page to the front; again is harmless. */
    void open() {
        front.clear();
        if (!called) {
            called = true;
            told = false;
            calledAtS = host.nowS();
        }
        if (!pane.inIncident()) {
            pane.showIncident(host.incident(host.nowS() - calledAtS));
        }
    }

    /** The word was typed. */
    void leave() {
        called = false;
        host.resume();
    }

    /**
     * The page to show instead of a moment of Live, or null.
     *
     * @param live the moment, null without a show
     */
    @Nullable
    IncidentView page(@Nullable LiveView live) {
        IncidentView shown = live == null ? null : live.incident();
        if (shown != null || !called) {
            return shown;
        }
        if (live != null && !told) {
            told = true;
            host.command(Command.INCIDENT);
        }
        return host.incident(host.nowS() - calledAtS);
    }
}
