#include "tests/support/network_cameras.h"

#include <QBuffer>

#undef signals // GLib has fields of that name
#include <gst/app/gstappsrc.h>
#include <gst/rtsp-server/rtsp-server.h>

#include <cstdlib>

namespace support {
namespace {

/// Each picture anew, 25 a second.
constexpr const char* pipeline =
    "( appsrc name=shown is-live=true do-timestamp=true format=time caps=image/jpeg,framerate=25/1 "
    "! jpegdec ! imagefreeze is-live=true ! video/x-raw,framerate=25/1 ! jpegenc ! rtpjpegpay name=pay0 "
    "pt=26 )";

void show(GstRTSPMediaFactory*, GstRTSPMedia* media, gpointer jpeg) {
    const auto* bytes = static_cast<const QByteArray*>(jpeg);
    GstElement* top = gst_rtsp_media_get_element(media);
    GstElement* source = gst_bin_get_by_name(GST_BIN(top), "shown");
    GstBuffer* buffer = gst_buffer_new_memdup(bytes->constData(), static_cast<gsize>(bytes->size()));
    gst_app_src_push_buffer(GST_APP_SRC(source), buffer);
    gst_app_src_end_of_stream(GST_APP_SRC(source));
    gst_object_unref(source);
    gst_object_unref(top);
}

GstRTSPFilterResult sendAway(GstRTSPServer*, GstRTSPClient*, gpointer) {
    return GST_RTSP_FILTER_REMOVE;
}

} // namespace

struct RtspCamera::Server {
    GMainContext* context = g_main_context_new();
    GMainLoop* loop = g_main_loop_new(context, FALSE);
    GstRTSPServer* server = gst_rtsp_server_new();
    GSource* source = nullptr;
    std::jthread thread;

    Server(const std::string& port, const QByteArray& jpeg) {
        gst_rtsp_server_set_address(server, "127.0.0.1");
        gst_rtsp_server_set_service(server, port.c_str());
        GstRTSPMediaFactory* factory = gst_rtsp_media_factory_new();
        gst_rtsp_media_factory_set_launch(factory, pipeline);
        gst_rtsp_media_factory_set_shared(factory, TRUE);
        g_signal_connect(factory, "media-configure", G_CALLBACK(show), const_cast<QByteArray*>(&jpeg));
        GstRTSPMountPoints* mounts = gst_rtsp_server_get_mount_points(server);
        gst_rtsp_mount_points_add_factory(mounts, "/bench", factory);
        g_object_unref(mounts);
        source = gst_rtsp_server_create_source(server, nullptr, nullptr);
        if (source == nullptr) std::abort(); // the port is taken
        g_source_attach(source, context);
        thread = std::jthread([this] {
            g_main_context_push_thread_default(context);
            g_main_loop_run(loop);
            g_main_context_pop_thread_default(context);
        });
    }

    ~Server() {
        g_source_destroy(source);
        gst_rtsp_server_client_filter(server, sendAway, nullptr);
        g_main_loop_quit(loop);
        thread.join();
        g_source_unref(source);
        g_object_unref(server);
        g_main_loop_unref(loop);
        g_main_context_unref(context);
    }

    Server(const Server&) = delete;
    Server& operator=(const Server&) = delete;
};

RtspCamera::RtspCamera(const QImage& picture) {
    gst_init(nullptr, nullptr);
    QBuffer buffer(&m_jpeg);
    picture.save(&buffer, "JPEG", 90);
}

RtspCamera::~RtspCamera() = default;

void RtspCamera::switchOn() {
    m_server = std::make_unique<Server>(m_port, m_jpeg);
    m_port = std::to_string(gst_rtsp_server_get_bound_port(m_server->server));
}

void RtspCamera::switchOff() {
    m_server.reset();
}

std::string RtspCamera::address() const {
    return "rtsp://127.0.0.1:" + m_port + "/bench";
}

} // namespace support
