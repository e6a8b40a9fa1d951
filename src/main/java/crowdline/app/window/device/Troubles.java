package crowdline.app.window.device;

import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.theme.Tone;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** What is wrong with the devices: it stands in the foot line until it is mended. On the event thread. */
public final class Troubles {
    private final List<Device> devices;
    private final Consumer<List<Mark>> stand;
    private final Consumer<Mark> say;
    private List<String> before;

    /**
     * A device.
     *
     * @param trouble what is wrong, empty if nothing is
     * @param open whether it is used at all
     * @param mended what is said when nothing is wrong any more
     */
    public record Device(Supplier<String> trouble, BooleanSupplier open, String mended) {}

    /**
     * @param stand takes what is to stand in the foot line from now on
     * @param say says a sentence there once
     */
    public Troubles(List<Device> devices, Consumer<List<Mark>> stand, Consumer<Mark> say) {
        this.devices = List.copyOf(devices);
        this.stand = stand;
        this.say = say;
        before = devices.stream().map(device -> "").toList();
    }

    /** Looks how the devices stand now, and says what has changed. */
    public void look() {
        List<String> now =
                devices.stream().map(device -> device.trouble().get()).toList();
        if (now.equals(before)) {
            return;
        }
        List<Mark> standing = new ArrayList<>();
        List<Mark> mended = new ArrayList<>();
        for (int i = 0; i < now.size(); i++) {
            Device device = devices.get(i);
            if (!now.get(i).isEmpty()) {
                standing.add(new Mark(Form.DIAMOND, Tone.CAUTION, now.get(i)));
            } else if (!before.get(i).isEmpty() && device.open().getAsBoolean()) {
                mended.add(new Mark(Form.DISC, Tone.GOOD, device.mended()));
            }
        }
        before = now;
        stand.accept(standing);
        mended.forEach(say);
    }
}
