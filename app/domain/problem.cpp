#include "domain/problem.h"

namespace oddglass {

Problem::Problem(Trouble trouble, std::string argument, Values values)
    : trouble_(trouble), argument_(std::move(argument)), values_(std::move(values)), text_(argument_) {
  for (const auto& [name, value] : values_) text_ += ' ' + name + '=' + value;
}

}  // namespace oddglass
