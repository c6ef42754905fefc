// SPDX-License-Identifier: GPL-3.0-or-later
#include "gui/terminal/display.hpp"

#include <dlfcn.h>
#include <sys/socket.h>
#include <sys/un.h>
#include <unistd.h>

#include <algorithm>
#include <cstdlib>
#include <iterator>
#include <string>
#include <string_view>

namespace gui {
namespace {

std::string_view variable(const char* name) {
  const char* value = std::getenv(name);
  return value ? std::string_view(value) : std::string_view();
}

// The very library that Qt would use, asked for by name: it knows sockets, hosts and cookies. Where
// it is missing, Qt cannot draw there either. It stays loaded for the window to come.
template <class Function>
Function* fromXcb(const char* name) {
  static void* const library = ::dlopen("libxcb.so.1", RTLD_NOW);
  return library ? reinterpret_cast<Function*>(::dlsym(library, name)) : nullptr;
}

bool xAnswers() {
  if (variable("DISPLAY").empty()) return false;
  const auto connect = fromXcb<void*(const char*, int*)>("xcb_connect");
  const auto hasError = fromXcb<int(void*)>("xcb_connection_has_error");
  const auto disconnect = fromXcb<void(void*)>("xcb_disconnect");
  if (!connect || !hasError || !disconnect) return false;
  void* connection = connect(nullptr, nullptr);  // never null; to be closed with an error, too
  const bool answers = hasError(connection) == 0;
  disconnect(connection);
  return answers;
}

bool waylandAnswers() {
  if (!variable("WAYLAND_SOCKET").empty()) return true;  // opened for us, and only once
  std::string path(variable("WAYLAND_DISPLAY"));
  if (path.empty()) return false;
  if (!path.starts_with('/')) path = std::string(variable("XDG_RUNTIME_DIR")) + '/' + path;
  sockaddr_un address{};
  address.sun_family = AF_UNIX;
  if (path.size() >= sizeof address.sun_path) return false;
  std::copy(path.begin(), path.end(), std::begin(address.sun_path));
  const int socket = ::socket(AF_UNIX, SOCK_STREAM | SOCK_CLOEXEC, 0);
  if (socket < 0) return false;
  const int failed = ::connect(socket, reinterpret_cast<const sockaddr*>(&address), sizeof address);
  ::close(socket);
  return failed == 0;
}

// "xcb", or "wayland-egl:option".
bool answers(std::string_view platform) {
  if (platform.starts_with("xcb")) return xAnswers();
  if (platform.starts_with("wayland")) return waylandAnswers();
  return true;
}

}  // namespace

bool hasScreen() {
  std::string_view platforms = variable("QT_QPA_PLATFORM");
  if (platforms.empty()) return xAnswers() || waylandAnswers();
  while (!platforms.empty()) {  // Qt takes the first that works
    const std::size_t end = platforms.find(';');
    if (answers(platforms.substr(0, end))) return true;
    platforms.remove_prefix(end == std::string_view::npos ? platforms.size() : end + 1);
  }
  return false;
}

void preferDisplayThatAnswers() {
  if (!variable("QT_QPA_PLATFORM").empty()) return;
  const bool x = xAnswers();
  if (x != waylandAnswers()) ::setenv("QT_QPA_PLATFORM", x ? "xcb" : "wayland", 1);
}

}  // namespace gui
