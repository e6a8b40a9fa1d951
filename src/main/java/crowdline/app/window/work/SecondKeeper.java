package crowdline.app.window.work;

import crowdline.console.second.SecondHost;
import crowdline.storage.settings.SecondLook;

/** Keeps how the second window looks. */
public record SecondKeeper(KeptSettings settings) implements SecondHost {
    @Override
    public SecondLook look() {
        return settings.get().second();
    }

    @Override
    public void keep(SecondLook look) {
        settings.change(s -> s.withSecond(look));
    }
}
