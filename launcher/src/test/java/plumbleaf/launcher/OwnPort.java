package plumbleaf.launcher;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;

/**
 * A port to listen on again and again with pauses between. It lies below those that a system gives to whoever asks for any (from 32768 up on Linux, from 49152
 * elsewhere: RFC 6335, 6), so that no other program of this machine is given it in a pause.
 */
final class OwnPort {
    private static final int FIRST = 20_000;
    private static final int MANY = 10_000;

    private OwnPort() {}

    static int free() throws IOException {
        int from = (int) (ProcessHandle.current().pid() * 31 % MANY);
        for (int i = 0; i < MANY; i++) {
            int port = FIRST + (from + i) % MANY;
            if (isFree(port)) return port;
        }
        throw new IOException("No port is free from " + FIRST + " to " + (FIRST + MANY - 1));
    }

    private static boolean isFree(int port) {
        try (ServerSocket socket = new ServerSocket(port, 1, InetAddress.getLoopbackAddress())) {
            return socket.isBound();
        } catch (IOException taken) {
            return false;
        }
    }
}
