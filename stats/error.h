#pragma once

#include <stdexcept>
#include <string>

namespace oddglass::stats {

/// The one error of this room: an argument that no data could have. Names the argument and says what is wrong with it.
class BadInput : public std::invalid_argument {
 public:
  BadInput(std::string argument, const std::string& message)
      : std::invalid_argument(argument + ": " + message), argument_(std::move(argument)), message_(message) {}
  const std::string& argument() const { return argument_; }
  const std::string& message() const { return message_; }

 private:
  std::string argument_;
  std::string message_;
};

}  // namespace oddglass::stats
