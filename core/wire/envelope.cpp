#include "envelope.h"

#include "fields.h"
#include "note_writer.h"
#include "plan.h"

namespace twinround {

void open_envelope(JsonWriter& json, bool ok) {
  json.open_object();
  json.key("ok").yes_no(ok);
  json.key("version").whole(kVersion);
  json.key("rules").whole(kRules);
}

std::string refused(const std::vector<Problem>& problems) {
  JsonWriter json;
  open_envelope(json, false);
  json.key("problems");
  write_problems(json, problems);
  json.close_object();
  return json.written();
}

}  // namespace twinround
