package crowdline.console.receiver;

import java.util.List;

/**
 * Where the aircraft's position can come from, and where it comes from now.
 *
 * @param ports the ports found
 * @param inUse what is in use, as {@link ReceiverChoice#where()} or a flight log's file; empty for nothing
 * @param state how that stands, in one phrase; empty for nothing
 */
public record Receivers(List<ReceiverChoice> ports, String inUse, String state) {
    public Receivers {
        ports = List.copyOf(ports);
    }
}
