package plumbleaf.launcher;

import java.io.IOException;
import java.net.BindException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;

/** Ports of this machine. */
final class Port {
    static final int USUAL = 8147;

    private Port() {}

    /** Whether nobody listens there; whatever else is wrong with it the server will say. */
    static boolean isFree(String address, int port) {
        try (ServerSocket probe = new ServerSocket()) {
            probe.setReuseAddress(true);
            probe.bind(new InetSocketAddress(address, port));
            return true;
        } catch (BindException taken) {
            return false;
        } catch (IOException other) {
            return true;
        }
    }

    /** The port asked for, or a free one where someone has it already. */
    static int freeFrom(int asked) {
        try (ServerSocket probe = new ServerSocket(asked, 1, InetAddress.getLoopbackAddress())) {
            return probe.getLocalPort();
        } catch (IOException taken) {
            return 0;
        }
    }
}
